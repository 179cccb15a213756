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
    /// Dark surroundings.
    property bool dark: false
    /// A small laptop's screen: the drawing needs what height there is.
    readonly property bool low: height < 800

    width: 1440
    height: 920
    minimumWidth: 1100
    minimumHeight: 700
    title: window.garden.title
    color: Theme.window
    font.pixelSize: Theme.body

    onClosing: (close) => close.accepted = files.mayClose()

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
    }
    AddTreeSheet {
        id: treeSheet
        objectName: "treeSheet"
        tree: window.addTree
    }
    TreeSheet {
        id: facts
        objectName: "treeFacts"
        tree: window.tree
        photos: window.diary.photos
    }
    PhotoSheet {
        photos: window.diary.photos
    }
    GardenSheet {
        id: gardenFacts
        objectName: "gardenFactsSheet"
        grounds: window.grounds
        language: window.language
        languageCodes: window.languageCodes
        languageNames: window.languageNames
        onLanguageWanted: (code) => window.language = code
    }
    LimbSheet {
        id: limbFacts
        objectName: "limbFactsSheet"
        limb: window.limb
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
    PaperSheet {
        id: paperSheet
        paper: window.paper
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        TopBar {
            Layout.fillWidth: true
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
        ProblemLine {
            Layout.fillWidth: true
            garden: window.garden
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.margins: Theme.wide
            spacing: Theme.wide

            DiaryPage {
                objectName: "diaryPage"
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: window.showsDiary
                diary: window.diary
            }
            SplitView {
                Layout.fillWidth: true
                Layout.fillHeight: true
                visible: !window.showsDiary
                orientation: Qt.Vertical
                handle: Item {
                    implicitHeight: Theme.wide

                    Rectangle {
                        anchors.centerIn: parent
                        width: 44
                        height: 4
                        radius: 2
                        color: Theme.edge
                    }
                }

                Panel {
                    visible: !window.planEditor.editing
                    SplitView.fillHeight: !window.planEditor.editing
                    SplitView.minimumHeight: 280

                    SidePage {
                        id: sidePage
                        anchors { fill: parent; margins: 1 }
                        visible: window.garden.trees.length > 0 && !window.showsRound
                        side: window.side
                        shape: window.limbShape
                        underlay: window.underlay
                        onLimbFactsWanted: limbFacts.open()
                        onRoundWanted: window.showsRound = true
                    }
                    Loader {
                        id: roundLoader
                        anchors { fill: parent; margins: 1 }
                        active: window.showsRound
                        visible: window.garden.trees.length > 0
                        Component.onCompleted: roundLoader.setSource(
                            Qt.resolvedUrl("round/RoundPage.qml"),
                            { "round": window.round, "side": window.side, "objectName": "roundPage" })
                    }
                    Connections {
                        target: roundLoader.item as RoundPage
                        function onLimbFactsWanted() { limbFacts.open() }
                        function onSideWanted() {
                            window.showsRound = false
                            sidePage.takeFocus()
                        }
                    }
                    FirstSteps {
                        anchors.fill: parent
                        visible: window.garden.trees.length === 0
                        onTreeWanted: treeSheet.open()
                        onPlanWanted: window.planEditor.editing = true
                    }
                }
                RowLayout {
                    SplitView.fillHeight: window.planEditor.editing
                    SplitView.preferredHeight: window.low ? 216 : 268
                    SplitView.minimumHeight: window.low ? 200 : 250
                    spacing: Theme.wide

                    Panel {
                        Layout.fillWidth: true
                        Layout.fillHeight: true

                        ColumnLayout {
                            anchors { fill: parent; margins: 1 }
                            spacing: 0

                            PlanTools {
                                visible: window.planEditor.editing
                                Layout.fillWidth: true
                                Layout.margins: Theme.gap
                                editor: window.planEditor
                            }
                            PlanPage {
                                objectName: "planDrawing"
                                Layout.fillWidth: true
                                Layout.fillHeight: true
                                plan: window.plan
                                side: window.side
                                light: window.light
                                editor: window.planEditor
                                onGardenFactsWanted: gardenFacts.open()
                            }
                        }
                    }
                    Panel {
                        Layout.preferredWidth: 330
                        Layout.fillHeight: true

                        ThingPanel {
                            anchors { fill: parent; margins: Theme.wide }
                            visible: window.planEditor.editing
                            editor: window.planEditor
                            thing: window.thing
                        }
                        ConditionsPanel {
                            anchors { fill: parent; margins: window.low ? Theme.gap : Theme.wide }
                            visible: !window.planEditor.editing
                            conditions: window.conditions
                        }
                    }
                }
            }
            WhyPage {
                objectName: "whyPage"
                visible: window.why.isOpen && !window.showsDiary
                Layout.preferredWidth: window.width < 1300 ? 340 : 400
                Layout.maximumWidth: Layout.preferredWidth
                Layout.fillHeight: true
                why: window.why
            }
            AnswersColumn {
                objectName: "answersColumn"
                visible: !window.showsDiary && !window.why.isOpen && window.garden.trees.length > 0
                Layout.preferredWidth: window.width < 1300 ? 340 : 400
                Layout.maximumWidth: Layout.preferredWidth
                Layout.fillHeight: true
                answers: window.answers
                work: window.work
                light: window.light
                day: window.day
                why: window.why
                offers: window.offers
                stages: window.stages
            }
        }
        CautionStrip {
            Layout.fillWidth: true
            work: window.work
        }
    }
}
