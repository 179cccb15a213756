import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Walks the gardener round the tree.
RowLayout {
    id: root

    required property SideViewModel side

    spacing: Theme.gap

    Text {
        text: root.side.bearingText
        font.pixelSize: Theme.body
        font.weight: Font.DemiBold
        color: Theme.ink
        Layout.fillWidth: true
        Layout.minimumWidth: 100
        Layout.preferredWidth: 150
        Layout.maximumWidth: 150
        elide: Text.ElideRight
    }
    Slide {
        objectName: "walkSlide"
        Layout.fillWidth: true
        Layout.minimumWidth: 60
        Layout.preferredWidth: 180
        Layout.maximumWidth: 180
        label: qsTr("Walk round the tree")
        valueText: root.side.bearingText
        from: 0
        to: 359
        stepSize: 5
        value: root.side.bearing
        onMoved: root.side.bearing = value
    }
}
