import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// A line to type in, in the window's colours.
TextField {
    id: root

    /// What a screen reader calls it.
    required property string spoken

    implicitHeight: Theme.control
    placeholderTextColor: Theme.softInk
    font.pixelSize: Theme.body
    color: Theme.ink
    selectionColor: Theme.accent
    selectedTextColor: Theme.accentInk
    selectByMouse: true
    Accessible.name: spoken

    background: Rectangle {
        radius: Theme.radius
        color: Theme.field
        border.color: Theme.edge

        FocusRing { around: root }
    }
}
