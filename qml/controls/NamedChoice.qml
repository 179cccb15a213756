import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// One of a list of words, with what it is about above it.
ColumnLayout {
    id: root

    required property string label
    property alias model: box.model
    property alias currentIndex: box.currentIndex
    property alias displayText: box.displayText

    signal activated(int index)

    spacing: 3

    Text {
        Layout.fillWidth: true
        text: root.label
        font.pixelSize: Theme.small
        color: Theme.softInk
        elide: Text.ElideRight
    }
    Choice {
        id: box
        objectName: root.objectName + "Box"
        Layout.fillWidth: true
        label: root.label
        onActivated: (index) => root.activated(index)
    }
}
