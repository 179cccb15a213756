import QtQuick
import Underbough.Ui

/// The outline of whatever has the keyboard's focus.
Rectangle {
    id: root

    /// The item that the ring is drawn around.
    required property Item around

    anchors.fill: parent
    anchors.margins: -3
    radius: Theme.radius + 2
    color: "transparent"
    border.width: 2
    border.color: Theme.focus
    visible: root.around.activeFocus
}
