import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The window: the drawings to the left, the answers to the right, the cautions always in sight.
ApplicationWindow {
    id: window

    required property GardenViewModel garden
    required property SideViewModel side
    required property PlanViewModel plan
    required property RoundViewModel round
    required property ConditionsViewModel conditions
    required property AnswersViewModel answers
    required property WorkViewModel work
    required property LightViewModel light
    required property DiaryViewModel diary
    required property DayViewModel day
    /// The diary is in sight instead of the drawings.
    property bool showsDiary: false
    /// The tree is shown in three dimensions instead of from the side.
    property bool showsRound: false
    required property NewGardenViewModel newGarden
    required property AddTreeViewModel addTree
    required property PlanEditorViewModel planEditor
    required property ThingViewModel thing
    required property TreeViewModel tree
    required property LimbViewModel limb
    required property LimbShapeViewModel limbShape
    required property PaperViewModel paper
    required property UnderlayViewModel underlay
    required property GroundsViewModel grounds
    required property WhyViewModel why
    required property OffersViewModel offers
    required property StagesViewModel stages
    /// The code of the language asked for, from the next start on; empty: the computer's.
    property string language: ""
    property list<string> languageCodes
    property list<string> languageNames
    /// Nobody has used the program here before: it shows itself.
    property bool firstTime: false
    /// Dark surroundings.
    property bool dark: false
    readonly property bool editsPlan: window.planEditor.editing
    /// A small laptop's screen: the drawing needs what height there is.
    readonly property bool low: height < 800
    /// A small screen, or large letters on it: one thing under the other, rolled as one page.
    readonly property bool narrow: width < 1100

    width: 1440
    height: 920
    minimumWidth: 600 // a screen of 1920 x 1080 at three times the size has 640 x 360
    minimumHeight: 340
    title: window.garden.title
    color: Theme.window
    font.pixelSize: Theme.body

    onEditsPlanChanged: planShown.start()

    onClosing: (close) => close.accepted = files.mayClose()

    Component.onCompleted: {
        if (window.firstTime)
            walk.start()
    }

    function showAround() {
        if (window.garden.trees.length === 0)
            return
        window.showsDiary = false
        window.planEditor.editing = false
        window.why.close()
        walk.start()
    }

    readonly property list<Item> parts: [topBar, drawings.treePanel, drawings.planPanel, drawings.weatherPanel,
                                         diaryPage, whyPage, answersColumn, searchLine, problem, cautions]

    /// To the next part of the window, or the one before, without all that Tab would pass.
    function goTo(step: int) {
        let now = window.parts.length - 1
        for (let item = window.activeFocusItem; item; item = item.parent)
            for (let i = 0; i < window.parts.length; ++i)
                if (window.parts[i] === item)
                    now = i
        do
            now = (now + step + window.parts.length) % window.parts.length
        while (!window.parts[now].visible)
        window.parts[now].nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
    }

    Timer { // once all of it has its place
        id: planShown
        interval: 0
        onTriggered: room.show(drawings.planPanel)
    }
    Binding {
        target: Theme
        property: "dark"
        value: window.dark
    }
    FileFlow {
        id: files
        garden: window.garden
        onCloseWanted: window.close()
        onNewWanted: {
            window.newGarden.reset()
            newSheet.open()
        }
    }
    NewGardenSheet {
        id: newSheet
        objectName: "newSheet"
        garden: window.newGarden
        said: window.garden.problem
    }
    AddTreeSheet {
        id: treeSheet
        objectName: "treeSheet"
        tree: window.addTree
        said: window.garden.problem
    }
    TreeSheet {
        id: facts
        objectName: "treeFacts"
        tree: window.tree
        photos: window.diary.photos
        said: window.garden.problem
    }
    PhotoSheet {
        photos: window.diary.photos
    }
    GardenSheet {
        id: gardenFacts
        objectName: "gardenFactsSheet"
        grounds: window.grounds
        said: window.garden.problem
        language: window.language
        languageCodes: window.languageCodes
        languageNames: window.languageNames
        onLanguageWanted: (code) => window.language = code
        onWalkWanted: {
            gardenFacts.close()
            window.showAround()
        }
    }
    LimbSheet {
        id: limbFacts
        objectName: "limbFactsSheet"
        limb: window.limb
        said: window.garden.problem
    }
    Shortcut {
        sequences: ["Ctrl+N"]
        onActivated: files.askNew()
    }
    Shortcut {
        sequences: ["Ctrl+Z"]
        onActivated: window.garden.undo()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+Z", "Ctrl+Y"]
        onActivated: window.garden.redo()
    }
    Shortcut {
        sequences: ["Ctrl+O"]
        onActivated: files.askOpen()
    }
    Shortcut {
        sequences: ["Ctrl+S"]
        onActivated: files.save()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+S"]
        onActivated: files.askSaveAs()
    }
    Shortcut {
        sequences: ["Ctrl+P"]
        onActivated: paperSheet.open()
    }
    Shortcut {
        sequences: ["F6"]
        onActivated: window.goTo(1)
    }
    Shortcut {
        sequences: ["Shift+F6"]
        onActivated: window.goTo(-1)
    }
    Shortcut {
        sequences: ["F1"]
        onActivated: window.showAround()
    }
    WalkThrough {
        id: walk
        objectName: "walk"
        surface: window.contentItem
        targets: [drawings.treePanel, answersColumn.firstCard, answersColumn.workCard, drawings.weatherPanel, drawings.planPanel, topBar]
        onPointed: (target) => {
            if (target === answersColumn.firstCard || target === answersColumn.workCard)
                answersColumn.shown(target)
            else
                room.show(target)
        }
        onOwnGardenWanted: files.askNew()
    }
    PaperSheet {
        id: paperSheet
        paper: window.paper
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        Scroller {
            id: room
            objectName: "room"
            showsBar: true
            Layout.fillWidth: true
            Layout.fillHeight: true
            contentHeight: Math.max(availableHeight, window.narrow ? page.implicitHeight : 600)

            ColumnLayout {
                id: page
                width: room.availableWidth
                height: room.contentHeight
                spacing: 0

                TopBar {
                    id: topBar
                    Layout.fillWidth: true
                    narrow: window.narrow
                    garden: window.garden
                    showsDiary: window.showsDiary
                    onDiaryWanted: (shown) => window.showsDiary = shown
                    onNewWanted: files.askNew()
                    onOpenWanted: files.askOpen()
                    onTreeWanted: treeSheet.open()
                    onFactsWanted: facts.open()
                    onExampleWanted: (index) => files.askExample(index)
                    onSaveWanted: files.save()
                    onSaveAsWanted: files.askSaveAs()
                    onPaperWanted: paperSheet.open()
                    onDarkWanted: (dark) => window.dark = dark
                }
                Item {
                    id: work

                    readonly property real sideWidth: window.narrow ? width : window.width < 1300 ? 340 : 400
                    readonly property bool hasSide: window.why.isOpen || window.garden.trees.length > 0
                    readonly property real below: drawings.ownHeight + Theme.wide

                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    Layout.margins: window.narrow ? Theme.gap : Theme.wide
                    implicitHeight: window.showsDiary ? diaryPage.implicitHeight
                                  : drawings.ownHeight + (hasSide ? Theme.wide + (window.why.isOpen ? 480 : answersColumn.contentHeight) : 0)

                    DiaryPage {
                        id: diaryPage
                        objectName: "diaryPage"
                        anchors.fill: parent
                        visible: window.showsDiary
                        diary: window.diary
                        narrow: window.narrow
                    }
                    DrawingsPage {
                        id: drawings
                        width: window.narrow || !work.hasSide ? work.width : work.width - work.sideWidth - Theme.wide
                        height: window.narrow ? ownHeight : work.height
                        visible: !window.showsDiary
                        narrow: window.narrow
                        low: window.low
                        wheelRolls: room.rolls
                        garden: window.garden
                        side: window.side
                        round: window.round
                        limbShape: window.limbShape
                        underlay: window.underlay
                        plan: window.plan
                        planEditor: window.planEditor
                        thing: window.thing
                        light: window.light
                        conditions: window.conditions
                        showsRound: window.showsRound
                        onRoundWanted: (shown) => window.showsRound = shown
                        onLimbFactsWanted: limbFacts.open()
                        onGardenFactsWanted: gardenFacts.open()
                        onTreeWanted: treeSheet.open()
                    }
                    WhyPage {
                        id: whyPage
                        objectName: "whyPage"
                        visible: window.why.isOpen && !window.showsDiary
                        anchors.right: parent.right
                        y: window.narrow ? work.below : 0
                        width: work.sideWidth
                        height: work.height - y
                        why: window.why
                    }
                    AnswersColumn {
                        id: answersColumn
                        objectName: "answersColumn"
                        visible: !window.showsDiary && !window.why.isOpen && window.garden.trees.length > 0
                        anchors.right: parent.right
                        y: window.narrow ? work.below : 0
                        width: work.sideWidth
                        height: work.height - y
                        answers: window.answers
                        work: window.work
                        light: window.light
                        day: window.day
                        why: window.why
                        offers: window.offers
                        stages: window.stages
                        onShown: (card) => room.showTop(card)
                    }
                }
            }
        }
        CautionStrip {
            id: cautions
            Layout.fillWidth: true
            work: window.work
            mostHeight: window.height < 560 ? (open ? 0.6 : 0.23) * window.height : Infinity
        }
    }
    SearchLine {
        id: searchLine
        objectName: "searchLine"
        visible: answersColumn.visible && wanted
        anchors { right: parent.right; rightMargin: window.narrow ? Theme.gap : Theme.wide + 4; bottom: parent.bottom
                  bottomMargin: cautions.height + Theme.gap + (problem.visible ? problem.height + Theme.gap : 0) }
        width: Math.min(work.sideWidth - 8, window.width - 2 * Theme.gap, 400)
        answers: window.answers
        light: window.light
    }
    ProblemLine {
        id: problem
        anchors { horizontalCenter: parent.horizontalCenter; bottom: parent.bottom
                  bottomMargin: cautions.height + Theme.gap }
        width: Math.min(parent.width - 2 * Theme.wide, 900)
        garden: window.garden
    }
}
