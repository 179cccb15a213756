import QtQuick
import Underbough.App
import Underbough.Ui

/// A handle on one station of a limb. Drag it, or move it with the arrow keys (Shift: ten times as
/// far), thicken the wood there with + and -, grow a limb with Insert, erase the limb with Delete.
Grip {
    id: root

    required property SideViewModel side
    required property real handleX
    required property real handleY
    required property string limbId
    required property int station
    required property bool isEnd
    required property bool isUnion
    required property bool isChosen
    required property bool isShown
    required property string label

    objectName: "handle-" + limbId + "-" + station
    x: handleX - width / 2
    y: handleY - height / 2
    z: activeFocus ? 3 : isChosen ? 2 : 1
    visible: isShown
    Accessible.role: Accessible.Button
    Accessible.focusable: true
    Accessible.name: label
    Accessible.description: qsTr("Arrow keys move it, Shift moves it far, plus and minus change its thickness, Insert grows a limb, Delete erases the limb")

    function nudge(right: int, up: int, far: bool) {
        root.side.nudge(root.limbId, root.station, right, up, far)
    }

    onActiveFocusChanged: if (activeFocus) root.side.chooseLimb(limbId)
    onGrabbed: root.side.grab(root.limbId, root.station)
    onDragged: (x, y) => root.side.dragTo(x, y)
    onDropped: root.side.drop()

    Keys.onLeftPressed: (event) => root.nudge(-1, 0, event.modifiers & Qt.ShiftModifier)
    Keys.onRightPressed: (event) => root.nudge(1, 0, event.modifiers & Qt.ShiftModifier)
    Keys.onUpPressed: (event) => root.nudge(0, 1, event.modifiers & Qt.ShiftModifier)
    Keys.onDownPressed: (event) => root.nudge(0, -1, event.modifiers & Qt.ShiftModifier)
    Keys.onDeletePressed: root.side.deleteLimb()
    Keys.onPressed: (event) => {
        event.accepted = true
        if (event.key === Qt.Key_Plus)
            root.side.thicken(root.limbId, root.station, 1)
        else if (event.key === Qt.Key_Minus)
            root.side.thicken(root.limbId, root.station, -1)
        else if (event.key === Qt.Key_Insert)
            root.side.growLimb(root.limbId, root.station)
        else
            event.accepted = false
    }

    Rectangle {
        id: dot
        anchors.centerIn: parent
        width: root.isChosen ? 13 : 7
        height: width
        radius: root.isUnion ? 2 : width / 2
        rotation: root.isUnion ? 45 : 0
        color: root.isChosen ? Theme.focus : Theme.paper
        border.width: root.isChosen ? 2 : 1.5
        border.color: root.isChosen ? Theme.paper : Theme.focus
        scale: root.hot ? 1.5 : 1
        opacity: root.isChosen || root.hot ? 1 : 0.6
    }
    Rectangle {
        anchors.centerIn: parent
        width: 24
        height: 24
        radius: 12
        color: "transparent"
        border.width: 2
        border.color: Theme.focus
        visible: root.activeFocus
    }
}
