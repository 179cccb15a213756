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
    required property ConditionsViewModel conditions
    required property AnswersViewModel answers
    required property WorkViewModel work
    required property LightViewModel light
    required property DiaryViewModel diary
    required property DayViewModel day
    /// The diary is in sight instead of the drawings.
    property bool showsDiary: false
    /// Dark surroundings.
    property bool dark: false

    width: 1440
    height: 920
    minimumWidth: 1100
    minimumHeight: 680
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
    }
    Shortcut {
        sequences: [StandardKey.Undo] // qmllint disable unqualified
        onActivated: window.garden.undo()
    }
    Shortcut {
        sequences: [StandardKey.Redo] // qmllint disable unqualified
        onActivated: window.garden.redo()
    }
    Shortcut {
        sequences: [StandardKey.Open] // qmllint disable unqualified
        onActivated: files.askOpen()
    }
    Shortcut {
        sequences: [StandardKey.Save] // qmllint disable unqualified
        onActivated: files.save()
    }
    Shortcut {
        sequences: [StandardKey.SaveAs] // qmllint disable unqualified
        onActivated: files.askSaveAs()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: 0

        TopBar {
            Layout.fillWidth: true
            garden: window.garden
            showsDiary: window.showsDiary
            onDiaryWanted: (shown) => window.showsDiary = shown
            onOpenWanted: files.askOpen()
            onExampleWanted: (index) => files.askExample(index)
            onSaveWanted: files.save()
            onSaveAsWanted: files.askSaveAs()
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
                    SplitView.fillHeight: true
                    SplitView.minimumHeight: 280

                    SidePage {
                        anchors { fill: parent; margins: 1 }
                        side: window.side
                    }
                }
                RowLayout {
                    SplitView.preferredHeight: 268
                    SplitView.minimumHeight: 250
                    spacing: Theme.wide

                    Panel {
                        Layout.fillWidth: true
                        Layout.fillHeight: true

                        PlanPage {
                            objectName: "planDrawing"
                            anchors { fill: parent; margins: 1 }
                            plan: window.plan
                            side: window.side
                            light: window.light
                        }
                    }
                    Panel {
                        Layout.preferredWidth: 330
                        Layout.fillHeight: true

                        ConditionsPanel {
                            anchors { fill: parent; margins: Theme.wide }
                            conditions: window.conditions
                        }
                    }
                }
            }
            AnswersColumn {
                visible: !window.showsDiary
                Layout.preferredWidth: 400
                Layout.maximumWidth: 400
                Layout.fillHeight: true
                answers: window.answers
                work: window.work
                light: window.light
                day: window.day
            }
        }
        CautionStrip {
            Layout.fillWidth: true
            work: window.work
        }
    }
}
