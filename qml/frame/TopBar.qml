pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The garden's file, the chosen tree, and the way back.
Rectangle {
    id: root

    required property GardenViewModel garden
    /// The diary is in sight instead of the drawings.
    required property bool showsDiary

    signal diaryWanted(bool shown)
    signal newWanted
    signal openWanted
    signal treeWanted
    signal factsWanted
    signal exampleWanted(int index)
    signal saveWanted
    signal saveAsWanted
    signal paperWanted
    signal darkWanted(bool dark)

    /// Less air round the words, so that a small laptop's window holds all of them, and a large one
    /// what is said about saving too.
    readonly property bool tight: Window.width < (saveState.visible ? 1560 : 1400) // not its own: nothing would be laid out anew

    /// In rows one under the other.
    property bool narrow: false
    /// So narrow that the way back has a row of its own.
    readonly property bool threeRows: narrow && Window.width < 860

    implicitHeight: rows.implicitHeight + 26
    color: Theme.panel

    component BarButton: PlainButton {
        tight: root.tight
    }

    component Group: RowLayout {
        Layout.fillWidth: true
        spacing: root.tight ? 5 : Theme.gap
    }

    GridLayout {
        id: rows
        anchors { left: parent.left; right: parent.right; top: parent.top; topMargin: 13
                  leftMargin: Theme.margin; rightMargin: Theme.margin }
        columns: root.narrow ? 2 : 3
        columnSpacing: root.tight ? 5 : Theme.gap
        rowSpacing: Theme.gap

        Group {
            Layout.row: 0
            Layout.column: 0
            Layout.columnSpan: root.threeRows ? 2 : 1
            Layout.fillWidth: root.narrow

            BarButton {
                objectName: "newButton"
                text: qsTr("New\u2026")
                Accessible.description: qsTr("Start a garden of your own")
                onClicked: root.newWanted()
            }
            BarButton {
                objectName: "openButton"
                text: qsTr("Open\u2026")
                onClicked: root.openWanted()
            }
            BarButton {
                objectName: "saveButton"
                text: qsTr("Save")
                enabled: root.garden.isDirty || !root.garden.hasFile
                onClicked: root.saveWanted()
            }
            BarButton {
                objectName: "saveAsButton"
                text: qsTr("Save as\u2026")
                onClicked: root.saveAsWanted()
            }
            Text {
                id: saveState
                objectName: "saveState"
                text: root.garden.saveState
                visible: text.length > 0
                font.pixelSize: Theme.small
                color: Theme.softInk
            }
            BarButton {
                objectName: "paperButton"
                text: qsTr("Print\u2026")
                onClicked: root.paperWanted()
            }
            Choice {
                objectName: "exampleChoice"
                label: qsTr("Example gardens")
                model: root.garden.examples
                visible: root.garden.examples.length > 0
                currentIndex: -1
                displayText: qsTr("Examples")
                Layout.preferredWidth: root.tight ? 112 : 120
                onActivated: (index) => root.exampleWanted(index)
            }
            Item {
                visible: root.narrow
                Layout.fillWidth: true
            }
        }
        Group {
            Layout.row: root.narrow ? 1 : 0
            Layout.column: root.narrow ? 0 : 1
            Layout.columnSpan: root.narrow ? 2 : 1

            Rectangle {
                implicitWidth: 1
                Layout.preferredHeight: 30
                Layout.leftMargin: root.tight ? 0 : Theme.gap
                Layout.rightMargin: root.tight ? 0 : Theme.gap
                color: Theme.edge
                visible: !root.narrow
            }
            Choice {
                objectName: "treeChoice"
                label: qsTr("Tree")
                model: root.garden.trees
                currentIndex: root.garden.treeIndex
                enabled: count > 0
                displayText: count > 0 ? currentText : qsTr("No tree yet")
                Layout.fillWidth: true // it gives way before the buttons lose letters
                Layout.minimumWidth: 132
                Layout.preferredWidth: root.tight && !root.narrow ? 132 : 200
                Layout.maximumWidth: 200
                onActivated: (index) => root.garden.chooseTree(index)
            }
            BarButton {
                objectName: "diaryButton"
                text: qsTr("Diary")
                checkable: true
                checked: root.showsDiary
                Accessible.description: checked ? qsTr("The diary is shown") : qsTr("The drawings are shown")
                onToggled: root.diaryWanted(checked)
            }
            BarButton {
                objectName: "treeFactsButton"
                text: qsTr("About it\u2026")
                Accessible.description: qsTr("Name, vigour, protection, signs seen, and taking the tree away")
                enabled: root.garden.trees.length > 0
                onClicked: root.factsWanted()
            }
            BarButton {
                objectName: "addTreeButton"
                text: qsTr("Add a tree\u2026")
                onClicked: root.treeWanted()
            }
            Text {
                Layout.fillWidth: true
                Layout.preferredWidth: 1 // what the buttons leave
                text: root.garden.treeFacts
                font.pixelSize: Theme.body
                color: Theme.softInk
                elide: Text.ElideRight
                opacity: truncated ? 0 : 1 // half a name tells nothing
            }
        }
        Group {
            Layout.row: root.threeRows ? 2 : 0
            Layout.column: root.threeRows ? 0 : root.narrow ? 1 : 2
            Layout.columnSpan: root.threeRows ? 2 : 1
            Layout.alignment: Qt.AlignRight

            BarButton {
                objectName: "undoButton"
                text: root.garden.canUndo ? qsTr("Undo: %1").arg(root.garden.undoName) : qsTr("Undo")
                enabled: root.garden.canUndo
                Layout.fillWidth: true
                Layout.minimumWidth: Math.min(implicitWidth, root.tight ? 60 : 96)
                Layout.preferredWidth: Math.ceil(implicitWidth) + 1
                Layout.maximumWidth: Math.min(Math.ceil(implicitWidth) + 1, 230)
                onClicked: root.garden.undo()
            }
            BarButton {
                objectName: "redoButton"
                text: root.garden.canRedo ? qsTr("Redo: %1").arg(root.garden.redoName) : qsTr("Redo")
                enabled: root.garden.canRedo
                Layout.fillWidth: true
                Layout.minimumWidth: Math.min(implicitWidth, root.tight ? 60 : 96)
                Layout.preferredWidth: Math.ceil(implicitWidth) + 1
                Layout.maximumWidth: Math.min(Math.ceil(implicitWidth) + 1, 230)
                onClicked: root.garden.redo()
            }
            BarButton {
                objectName: "lightButton"
                text: Theme.dark ? qsTr("Light") : qsTr("Dark")
                Accessible.name: Theme.dark ? qsTr("Light colours") : qsTr("Dark colours")
                onClicked: root.darkWanted(!Theme.dark)
            }
            Item {
                visible: root.narrow
                Layout.fillWidth: true
            }
        }
    }
    Rectangle {
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        height: 1
        color: Theme.edge
    }
}
