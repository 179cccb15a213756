import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// The leaf that all cuts together take, against what may go.
ColumnLayout {
    id: root

    /// Shares of the whole leaf, 0 to 1.
    required property real taken
    required property real allowed
    required property string label

    readonly property real full: Math.max(0.3, root.allowed * 1.2, root.taken * 1.1)

    spacing: 4
    Accessible.role: Accessible.ProgressBar
    Accessible.name: qsTr("Leaf taken")
    Accessible.description: root.label

    Rectangle {
        Layout.fillWidth: true
        implicitHeight: 12
        radius: 6
        color: Theme.edge

        Rectangle {
            width: parent.width * Math.min(1, root.taken / root.full)
            height: parent.height
            radius: 6
            color: root.taken > root.allowed ? Theme.grave : Theme.accent
            Behavior on width { NumberAnimation { duration: 200 } }
        }
        Rectangle {
            x: parent.width * root.allowed / root.full - 1
            y: -3
            width: 2
            height: parent.height + 6
            color: Theme.ink
        }
    }
    Note { text: root.label }
}
