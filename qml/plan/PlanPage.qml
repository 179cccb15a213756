import QtQuick
import Underbough.App
import Underbough.Ui

/// The garden from above, with the shadow of the hour and the place of the side view's gardener.
PlanDrawing {
    id: root

    required property SideViewModel side
    required property LightViewModel light

    colours: Theme.drawing
    font.pixelSize: Theme.small
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("Plan")
    Accessible.description: root.plan.summary

    MouseArea {
        anchors.fill: parent
        onClicked: (event) => root.plan.chooseTreeAt(event.x, event.y)
    }
    PlainButton {
        objectName: "mapButton"
        anchors { left: parent.left; top: parent.top; margins: Theme.gap }
        text: root.light.mapShown ? qsTr("Shadow of the hour") : qsTr("Map of the sun")
        Accessible.description: root.light.mapShown
                                ? qsTr("Shows the shadows at the chosen day and hour")
                                : qsTr("Shows the hours of direct sun on the ground, mean of the growing season")
        onClicked: root.light.mapShown = !root.light.mapShown
    }
    Item {
        id: eye
        objectName: "eye"
        visible: root.plan.hasEye
        width: Theme.handle
        height: Theme.handle
        x: root.plan.eye.x - width / 2
        y: root.plan.eye.y - height / 2
        activeFocusOnTab: true
        Accessible.role: Accessible.Slider
        Accessible.focusable: true
        Accessible.name: qsTr("Where you stand for the side view: %1").arg(root.side.bearingText)
        Accessible.description: qsTr("Left and right arrow keys walk round the tree")

        Keys.onLeftPressed: root.side.bearing += 5
        Keys.onRightPressed: root.side.bearing -= 5

        Rectangle {
            anchors.centerIn: parent
            width: 16
            height: 16
            radius: 8
            color: Theme.focus
            border.width: 2
            border.color: Theme.paper
            scale: hand.containsMouse ? 1.2 : 1
        }
        FocusRing {
            around: eye
            anchors.margins: 2
            radius: 14
        }
        MouseArea {
            id: hand
            anchors.fill: parent
            hoverEnabled: true
            preventStealing: true
            cursorShape: Qt.OpenHandCursor
            onPressed: eye.forceActiveFocus(Qt.MouseFocusReason)
            onPositionChanged: (event) => {
                if (!pressed)
                    return
                const at = mapToItem(root, event.x, event.y)
                root.plan.walkTo(at.x, at.y)
            }
        }
    }
}
