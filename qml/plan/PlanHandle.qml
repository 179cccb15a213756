import QtQuick
import Underbough.App
import Underbough.Ui

/// A handle on the plan: a corner, or a whole thing. Drag it, or move it with the arrow keys (Shift:
/// ten times as far); Delete takes the thing away.
Item {
    id: root

    required property PlanEditorViewModel editor
    required property real handleX
    required property real handleY
    required property string thingId
    required property int corner
    required property bool isWhole
    required property string label

    objectName: "planHandle_" + thingId + "_" + corner
    width: Theme.handle
    height: Theme.handle
    x: handleX - width / 2
    y: handleY - height / 2
    z: activeFocus ? 3 : isWhole ? 1 : 2
    activeFocusOnTab: true
    Accessible.role: Accessible.Button
    Accessible.focusable: true
    Accessible.name: label
    Accessible.description: qsTr("Arrow keys move it, Shift moves it far, Delete takes it off the plan")

    function nudge(east: int, north: int, event: KeyEvent) {
        root.editor.nudge(root.thingId, root.corner, east, north, event.modifiers & Qt.ShiftModifier)
    }

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
        scale: mouse.containsMouse || mouse.pressed ? 1.3 : 1

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
    MouseArea {
        id: mouse
        anchors.fill: parent
        hoverEnabled: true
        preventStealing: true
        cursorShape: pressed ? Qt.ClosedHandCursor : Qt.OpenHandCursor
        onPressed: (event) => {
            root.forceActiveFocus(Qt.MouseFocusReason)
            const at = mapToItem(root.parent, event.x, event.y)
            root.editor.grab(root.thingId, root.corner, at.x, at.y)
        }
        onPositionChanged: (event) => {
            if (!pressed)
                return
            const at = mapToItem(root.parent, event.x, event.y)
            root.editor.dragTo(at.x, at.y)
        }
        onReleased: root.editor.drop()
        onCanceled: root.editor.drop()
    }
}
