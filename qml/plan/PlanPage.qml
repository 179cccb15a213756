pragma ComponentBehavior: Bound
import QtQuick
import Underbough.App
import Underbough.Ui

/// The garden from above, with the shadow of the hour and the place of the side view's gardener; or,
/// larger, to draw on.
PlanDrawing {
    id: root

    required property SideViewModel side
    required property LightViewModel light
    required property PlanEditorViewModel editor

    /// The page that it stands on is rolled by the wheel, which zooms with Ctrl held then.
    property bool wheelRolls: false

    signal gardenFactsWanted

    colours: Theme.drawing
    font.pixelSize: Theme.small
    activeFocusOnTab: true
    Accessible.role: Accessible.Graphic
    Accessible.focusable: true
    Accessible.name: qsTr("Plan")
    Accessible.description: qsTr("%1 Plus and minus zoom, arrow keys move the view, 0 shows all.").arg(root.plan.summary)

    Keys.onPressed: (event) => {
        event.accepted = root.activeFocus
        if (!root.activeFocus)
            return
        switch (event.key) {
        case Qt.Key_Plus: root.plan.zoomMiddle(1.25); break
        case Qt.Key_Minus: root.plan.zoomMiddle(0.8); break
        case Qt.Key_0: root.plan.fit(); break
        case Qt.Key_Left: root.plan.pan(40, 0); break
        case Qt.Key_Right: root.plan.pan(-40, 0); break
        case Qt.Key_Up: root.plan.pan(0, 40); break
        case Qt.Key_Down: root.plan.pan(0, -40); break
        default: event.accepted = false
        }
    }

    Shortcut {
        enabled: root.editor.drawing
        sequences: ["Return", "Enter"]
        onActivated: root.editor.finish()
    }
    Shortcut {
        enabled: root.editor.drawing
        sequences: ["Escape"]
        onActivated: root.editor.cancel()
    }
    Shortcut {
        enabled: root.editor.drawing
        sequences: ["Backspace"]
        onActivated: root.editor.takeBackCorner()
    }

    PinchHandler {
        id: pinch

        property real before: 1
        property point at

        target: null
        onActiveChanged: {
            pinch.before = 1
            pinch.at = centroid.position
        }
        onActiveScaleChanged: {
            root.plan.zoom(centroid.position.x, centroid.position.y, activeScale / pinch.before)
            pinch.before = activeScale
        }
        onCentroidChanged: {
            if (!pinch.active)
                return
            root.plan.pan(centroid.position.x - pinch.at.x, centroid.position.y - pinch.at.y)
            pinch.at = centroid.position
        }
    }
    MouseArea {
        id: ground

        property point last
        property bool dragged: false

        anchors.fill: parent
        preventStealing: root.editor.drawing // else a second finger may join, to zoom
        hoverEnabled: root.editor.drawing
        cursorShape: root.editor.drawing ? Qt.CrossCursor : Qt.ArrowCursor
        onPressed: (event) => {
            ground.last = Qt.point(event.x, event.y)
            ground.dragged = false
        }
        onPositionChanged: (event) => {
            const right = event.x - ground.last.x
            const down = event.y - ground.last.y
            if (pressed && Math.abs(right) + Math.abs(down) >= 10)
                ground.dragged = true
            if (root.editor.drawing)
                ground.dragged ? root.editor.dragBox(ground.last.x, ground.last.y, event.x, event.y)
                               : root.editor.hover(event.x, event.y)
            else if (ground.dragged) {
                root.plan.pan(right, down)
                ground.last = Qt.point(event.x, event.y)
            }
        }
        onReleased: (event) => {
            const dragged = ground.dragged
            ground.dragged = false
            if (dragged && root.editor.drawing)
                root.editor.dropBox(ground.last.x, ground.last.y, event.x, event.y)
            else if (dragged)
                return
            else if (root.editor.drawing)
                root.editor.addCorner(event.x, event.y)
            else if (root.editor.editing)
                root.editor.chooseAt(event.x, event.y)
            else
                root.plan.chooseTreeAt(event.x, event.y)
        }
        onWheel: (wheel) => {
            wheel.accepted = !root.wheelRolls || (wheel.modifiers & Qt.ControlModifier) !== 0
            if (wheel.accepted)
                root.plan.zoom(wheel.x, wheel.y, Math.pow(1.0015, wheel.angleDelta.y))
        }
    }
    FocusRing {
        around: root
        anchors.margins: 1
    }
    Flow {
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap }
        spacing: Theme.gap

        PlainButton {
            objectName: "drawPlanButton"
            tight: Window.width < 1300
            text: root.editor.editing ? qsTr("Done with the plan") : qsTr("Draw on the plan")
            primary: root.editor.editing
            onClicked: root.editor.editing = !root.editor.editing
        }
        PlainButton {
            objectName: "mapButton"
            tight: Window.width < 1300
            visible: !root.editor.editing
            text: root.light.mapShown ? qsTr("Shadow of the hour") : qsTr("Map of the sun")
            Accessible.description: root.light.mapShown
                                    ? qsTr("Shows the shadows at the chosen day and hour")
                                    : qsTr("Shows the hours of direct sun on the ground, mean of the growing season")
            onClicked: root.light.mapShown = !root.light.mapShown
        }
        PlainButton {
            objectName: "gardenFactsButton"
            tight: Window.width < 1300
            visible: !root.editor.editing
            text: qsTr("Garden\u2026")
            Accessible.description: qsTr("Place, wind, slope and sunshine of the garden, and the measures to read")
            onClicked: root.gardenFactsWanted()
        }
    }
    Row {
        anchors { right: parent.right; bottom: parent.bottom; margins: Theme.gap }
        spacing: 4

        PlainButton {
            objectName: "planCloser"
            width: Theme.control
            leftPadding: 0
            rightPadding: 0
            text: "+"
            Accessible.name: qsTr("Larger plan")
            onClicked: root.plan.zoomMiddle(1.25)
        }
        PlainButton {
            objectName: "planFarther"
            width: Theme.control
            leftPadding: 0
            rightPadding: 0
            text: "\u2212"
            Accessible.name: qsTr("Smaller plan")
            onClicked: root.plan.zoomMiddle(0.8)
        }
        PlainButton {
            objectName: "planFit"
            visible: !root.plan.isFitted
            text: qsTr("All of it")
            Accessible.name: qsTr("Show the whole garden")
            onClicked: root.plan.fit()
        }
    }
    Repeater {
        model: root.editor.handles

        PlanHandle { editor: root.editor }
    }
    Grip {
        id: eye
        objectName: "eye"
        visible: root.plan.hasEye && !root.editor.editing
        x: root.plan.eye.x - width / 2
        y: root.plan.eye.y - height / 2
        onDragged: (x, y) => root.plan.walkTo(x, y)
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
            scale: eye.hot ? 1.2 : 1
        }
        FocusRing {
            around: eye
            anchors.margins: 9
            radius: 14
        }
    }
}
