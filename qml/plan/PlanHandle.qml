import QtQuick
import Underbough.App
import Underbough.Ui

/// A handle on the plan: a corner, or a whole thing. Drag it, or move it with the arrow keys (Shift:
/// ten times as far); Delete takes the thing away.
Grip {
    id: root

    required property PlanEditorViewModel editor
    required property real handleX
    required property real handleY
    required property string thingId
    required property int corner
    required property bool isWhole
    required property string label

    objectName: "planHandle_" + thingId + "_" + corner
    x: handleX - width / 2
    y: handleY - height / 2
    z: activeFocus ? 3 : isWhole ? 1 : 2
    Accessible.role: Accessible.Button
    Accessible.focusable: true
    Accessible.name: label
    Accessible.description: qsTr("Arrow keys move it, Shift moves it far, Delete takes it off the plan")

    function nudge(east: int, north: int, event: KeyEvent) {
        root.editor.nudge(root.thingId, root.corner, east, north, event.modifiers & Qt.ShiftModifier)
    }

    onGrabbed: (x, y) => root.editor.grab(root.thingId, root.corner, x, y)
    onDragged: (x, y) => root.editor.dragTo(x, y)
    onDropped: root.editor.drop()

    Keys.onLeftPressed: (event) => root.nudge(-1, 0, event)
    Keys.onRightPressed: (event) => root.nudge(1, 0, event)
    Keys.onUpPressed: (event) => root.nudge(0, 1, event)
    Keys.onDownPressed: (event) => root.nudge(0, -1, event)
    Keys.onDeletePressed: root.editor.removeChosen()

    Rectangle {
        anchors.centerIn: parent
        width: root.isWhole ? 18 : 12
        height: width
        radius: root.isWhole ? width / 2 : 2
        color: root.isWhole ? Theme.paper : Theme.focus
        border.width: 2
        border.color: root.isWhole ? Theme.focus : Theme.paper
        scale: root.hot ? 1.3 : 1

        Rectangle {
            anchors.centerIn: parent
            visible: root.isWhole
            width: 6
            height: 6
            radius: 3
            color: Theme.focus
        }
    }
    Rectangle {
        anchors.centerIn: parent
        width: 26
        height: 26
        radius: 13
        color: "transparent"
        border.width: 2
        border.color: Theme.focus
        visible: root.activeFocus
    }
}
