import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// Something to tick, with words beside it.
CheckBox {
    id: root

    implicitHeight: Math.max(Theme.control, implicitContentHeight + 8)
    font.pixelSize: Theme.body
    spacing: Theme.gap
    opacity: enabled ? 1 : 0.55
    Accessible.name: text

    indicator: Rectangle {
        x: root.leftPadding
        y: (root.height - height) / 2
        width: 20
        height: 20
        radius: 4
        color: root.checked ? Theme.accent : Theme.field
        border.color: root.checked ? Theme.accent : Theme.softInk

        Text {
            anchors.centerIn: parent
            visible: root.checked
            text: "\u2713"
            font.pixelSize: Theme.body
            font.weight: Font.DemiBold
            color: Theme.accentInk
        }
        FocusRing { around: root }
    }
    contentItem: Text {
        leftPadding: root.indicator.width + root.spacing
        text: root.text
        font: root.font
        color: Theme.ink
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
    }
}
