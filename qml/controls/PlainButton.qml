import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// A button with words on it. `primary` is for the one thing most people come to do.
Button {
    id: root

    property bool primary: false
    /// Less air round smaller words, where room is short.
    property bool tight: false

    // Whole pixels: in a row of them the parts would add up to one too many.
    implicitWidth: Math.ceil(implicitContentWidth + leftPadding + rightPadding)
    implicitHeight: Theme.control
    leftPadding: root.tight ? 7 : 14
    rightPadding: leftPadding
    font.pixelSize: root.tight ? Theme.small + 1 : Theme.body
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
