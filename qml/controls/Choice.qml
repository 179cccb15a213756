pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// One of a list of words.
ComboBox {
    id: root

    /// What is chosen, for a screen reader.
    required property string label

    implicitHeight: Theme.control
    font.pixelSize: Theme.body
    Accessible.name: label

    contentItem: Text {
        leftPadding: 12
        rightPadding: 28
        text: root.displayText
        font: root.font
        color: Theme.ink
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    indicator: Text {
        x: root.width - width - 12
        y: (root.height - height) / 2
        text: "\u25be"
        font.pixelSize: Theme.body
        color: Theme.softInk
    }
    background: Rectangle {
        radius: Theme.radius
        color: root.hovered ? Theme.hover : Theme.panel
        border.color: Theme.edge

        FocusRing { around: root }
    }
    delegate: ItemDelegate {
        id: entry

        required property string modelData
        required property int index

        width: ListView.view ? ListView.view.width : 0
        height: Theme.control
        highlighted: root.highlightedIndex === index
        contentItem: Text {
            text: entry.modelData
            font: root.font
            color: Theme.ink
            verticalAlignment: Text.AlignVCenter
            elide: Text.ElideRight
        }
        background: Rectangle {
            color: entry.highlighted ? Theme.hover : Theme.panel
        }
    }
    popup: Popup {
        y: root.height + 4
        width: Math.max(root.width, 220)
        implicitHeight: contentItem.implicitHeight + 2
        padding: 1
        contentItem: ListView {
            clip: true
            implicitHeight: contentHeight
            model: root.popup.visible ? root.delegateModel : null
            currentIndex: root.highlightedIndex
        }
        background: Rectangle {
            radius: Theme.radius
            color: Theme.panel
            border.color: Theme.edge
        }
    }
}
