import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// A slider that says what it sets and what it stands at.
Slider {
    id: root

    /// What is set: "Gust".
    required property string label
    /// Where it stands, in words: "90 km/h".
    required property string valueText

    implicitHeight: Theme.control
    Accessible.name: label
    Accessible.description: valueText

    background: Rectangle {
        x: root.leftPadding
        y: root.topPadding + (root.availableHeight - height) / 2
        width: root.availableWidth
        height: 4
        radius: 2
        color: Theme.edge

        Rectangle {
            width: root.visualPosition * parent.width
            height: parent.height
            radius: 2
            color: Theme.accent
        }
    }
    handle: Rectangle {
        x: root.leftPadding + root.visualPosition * (root.availableWidth - width)
        y: root.topPadding + (root.availableHeight - height) / 2
        width: 20
        height: 20
        radius: 10
        color: root.pressed ? Theme.accent : Theme.panel
        border.width: 2
        border.color: Theme.accent

        FocusRing {
            around: root
            radius: 13
        }
    }
}
