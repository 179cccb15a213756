import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// Says that something is being worked out, once it has taken longer than a blink, and stops it.
RowLayout {
    id: root

    required property bool busy
    /// What is being worked out.
    required property string label
    property bool canStop: true

    signal stopWanted

    /// It has taken longer than a blink.
    property bool late: false

    visible: root.busy && root.late
    spacing: Theme.gap
    Accessible.role: Accessible.ProgressBar
    Accessible.name: root.label

    onBusyChanged: if (!root.busy) root.late = false

    Timer {
        interval: 300
        running: root.busy && !root.late
        onTriggered: root.late = true
    }
    Rectangle {
        Layout.fillWidth: true
        implicitHeight: 6
        radius: 3
        color: Theme.edge
        clip: true

        Rectangle {
            id: mark
            width: parent.width / 4
            height: parent.height
            radius: 3
            color: Theme.accent

            SequentialAnimation on x {
                running: root.visible
                loops: Animation.Infinite
                NumberAnimation { to: mark.parent.width - mark.width; duration: 900; easing.type: Easing.InOutQuad }
                NumberAnimation { to: 0; duration: 900; easing.type: Easing.InOutQuad }
            }
        }
    }
    PlainButton {
        objectName: "stopWork"
        visible: root.canStop
        text: qsTr("Stop")
        font.pixelSize: Theme.small
        Accessible.description: root.label
        onClicked: root.stopWanted()
    }
}
