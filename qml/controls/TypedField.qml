import QtQuick
import QtQuick.Layouts
import Underbough.Ui

/// A labelled line to type in. `typed` says every letter; the owner keeps the text.
ColumnLayout {
    id: root

    required property string label
    /// What stands in it.
    required property string value
    /// What an empty field stands for, or an example.
    property string hint: ""
    /// Read out after the label.
    property string help: ""
    property alias field: input
    property alias maximumLength: input.maximumLength

    signal typed(string text)
    signal entered
    /// It was left, or Enter was pressed, with something else in it than `value`.
    signal settled(string text)

    spacing: 3

    Text {
        Layout.fillWidth: true
        text: root.label
        font.pixelSize: Theme.small
        color: Theme.softInk
        elide: Text.ElideRight
    }
    LineInput {
        id: input
        objectName: root.objectName + "Input"
        Layout.fillWidth: true
        text: root.value
        placeholderText: root.hint
        maximumLength: 80
        spoken: root.label
        Accessible.description: root.help || root.hint
        onTextEdited: root.typed(text)
        onAccepted: root.entered()
        onEditingFinished: {
            if (text === root.value)
                return
            root.settled(text)
            text = root.value
        }
        onActiveFocusChanged: if (activeFocus) selectAll()

        // What is typed breaks the binding, so that the owner's answer has to be put back.
        Connections {
            target: root
            function onValueChanged() {
                if (input.text !== root.value)
                    input.text = root.value
            }
        }
    }
}
