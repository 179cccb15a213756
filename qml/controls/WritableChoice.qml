import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// One of a list of words, or one that is written in.
Choice {
    id: root

    editable: true
    Accessible.editable: true

    contentItem: TextField {
        leftPadding: 12
        rightPadding: 28
        text: root.editText
        font: root.font
        color: Theme.ink
        selectByMouse: true
        selectionColor: Theme.accent
        selectedTextColor: Theme.accentInk
        verticalAlignment: Text.AlignVCenter
        Accessible.name: root.label
        background: Item {}
    }
    background: Rectangle {
        radius: Theme.radius
        color: Theme.field
        border.color: Theme.edge

        FocusRing { around: root.contentItem }
    }
}
