import QtQuick
import Underbough.Ui

/// A line to write in, with what it is for above it.
Item {
    id: root

    /// What is written: "Who did it".
    required property string label
    /// What stands in grey while nothing is written.
    property string hint: ""
    /// What a screen reader calls it.
    property string spoken: root.label
    property alias text: input.text
    readonly property alias input: input

    /// Something was typed by hand.
    signal typed(string text)

    implicitWidth: 160
    implicitHeight: caption.implicitHeight + 3 + input.implicitHeight

    Text {
        id: caption
        width: root.width
        text: root.label
        font.pixelSize: Theme.small
        color: Theme.softInk
        elide: Text.ElideRight
    }
    LineInput {
        id: input
        objectName: root.objectName ? root.objectName + "Input" : ""
        anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
        placeholderText: root.hint
        spoken: root.spoken
        Accessible.description: root.hint

        onTextEdited: root.typed(text)
    }
}
