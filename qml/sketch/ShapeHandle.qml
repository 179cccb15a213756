import QtQuick
import Underbough.App
import Underbough.Ui

/// A handle on the chosen limb's thickness or its leaf. Drag it, or make more and less of it with the
/// arrow keys or plus and minus (Shift: ten times as far).
Grip {
    id: root

    required property LimbShapeViewModel shape
    required property real handleX
    required property real handleY
    required property int corner
    required property string label

    readonly property string mark: ["\u2194", "\u25c2", "\u25cc", "\u2193"][root.corner]

    objectName: "shapeHandle" + corner
    x: handleX - width / 2
    y: handleY - height / 2
    z: activeFocus ? 3 : 2
    Accessible.role: Accessible.Button
    Accessible.focusable: true
    Accessible.name: label
    Accessible.description: qsTr("Arrow up or plus: more, arrow down or minus: less, Shift for ten times as much")

    onGrabbed: root.shape.grab(root.corner)
    onDragged: (x, y) => root.shape.dragTo(x, y)
    onDropped: root.shape.drop()

    Keys.onPressed: (event) => {
        const more = [Qt.Key_Plus, Qt.Key_Up, Qt.Key_Right].includes(event.key)
        const less = [Qt.Key_Minus, Qt.Key_Down, Qt.Key_Left].includes(event.key)
        event.accepted = more || less
        if (event.accepted)
            root.shape.nudge(root.corner, (more ? 1 : -1) * (event.modifiers & Qt.ShiftModifier ? 10 : 1))
    }

    Rectangle {
        anchors.centerIn: parent
        width: 20
        height: 20
        radius: 10
        color: Theme.paper
        border.width: 2
        border.color: root.corner === 0 ? Theme.focus : Theme.good
        scale: root.hot ? 1.2 : 1

        Text {
            anchors.centerIn: parent
            text: root.mark
            font.pixelSize: Theme.small
            color: Theme.ink
        }
    }
    FocusRing {
        around: root
        anchors.margins: 8
        radius: 16
    }
}
