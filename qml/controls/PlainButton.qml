import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// A button with words on it. `primary` is for the one thing most people come to do.
Button {
    id: root

    property bool primary: false

    implicitHeight: Theme.control
    leftPadding: 14
    rightPadding: 14
    font.pixelSize: Theme.body
    opacity: enabled ? 1 : 0.55
    Accessible.name: text

    contentItem: Text {
        text: root.text
        font: root.font
        color: root.primary || root.checked ? Theme.accentInk : Theme.ink
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    background: Rectangle {
        radius: Theme.radius
        color: root.primary || root.checked ? Theme.accent
             : root.hovered || root.down ? Theme.hover : Theme.panel
        border.width: root.primary || root.checked ? 0 : 1
        border.color: Theme.edge
        Behavior on color { ColorAnimation { duration: Theme.quick } }

        FocusRing { around: root }
    }
}
