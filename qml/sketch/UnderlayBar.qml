pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What can be done with the photo under the drawing.
ColumnLayout {
    id: root

    required property UnderlayViewModel underlay

    spacing: Theme.gap

    component ToolButton: PlainButton {
        required property int tool

        checked: root.underlay.tool === tool
        enabled: root.underlay.isThere
        onClicked: root.underlay.tool = checked ? UnderlayViewModel.None : tool
    }

    FileDialog {
        id: dialog
        title: qsTr("A photo of the tree")
        nameFilters: root.underlay.nameFilters
        onAccepted: root.underlay.lay(selectedFile)
    }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap

        PlainButton {
            objectName: "underlayChoose"
            text: qsTr("Choose a picture\u2026")
            onClicked: dialog.open()
        }
        ToolButton {
            objectName: "underlayMove"
            tool: UnderlayViewModel.Move
            text: qsTr("Move it")
            Accessible.description: qsTr("Drag it under the drawing; arrow keys move it too")
        }
        ToolButton {
            objectName: "underlayLength"
            tool: UnderlayViewModel.Length
            text: qsTr("Known length")
            Accessible.description: qsTr("Two presses on something whose length you know set the scale")
        }
        ToolButton {
            objectName: "underlayUpright"
            tool: UnderlayViewModel.Upright
            text: qsTr("Upright edge")
            Accessible.description: qsTr("Two presses on an edge that is upright in truth take out how the camera was tilted")
        }
        Row {
            visible: root.underlay.isThere
            spacing: Theme.gap

            Text {
                anchors.verticalCenter: parent.verticalCenter
                text: qsTr("Turned %1").arg(root.underlay.turnedText)
                font.pixelSize: Theme.small
                color: Theme.softInk
            }
            Slide {
                objectName: "underlayTurn"
                width: 130
                label: qsTr("Turn the photo")
                valueText: root.underlay.turnedText
                from: -45
                to: 45
                stepSize: 0.5
                value: root.underlay.turned
                onMoved: root.underlay.setTurned(value)
            }
            Text {
                anchors.verticalCenter: parent.verticalCenter
                text: qsTr("Strength %1").arg(root.underlay.opacityText)
                font.pixelSize: Theme.small
                color: Theme.softInk
            }
            Slide {
                objectName: "underlayOpacity"
                width: 110
                label: qsTr("How strong the photo is")
                valueText: root.underlay.opacityText
                from: 0
                to: 1
                stepSize: 0.05
                value: root.underlay.opacity
                onMoved: root.underlay.setOpacity(value)
            }
        }
        PlainButton {
            objectName: "underlayAway"
            visible: root.underlay.isThere
            text: qsTr("Take it away")
            Accessible.description: qsTr("It stays among the tree's photos in the diary")
            onClicked: root.underlay.takeAway()
        }
        PlainButton {
            objectName: "underlayLook"
            visible: root.underlay.elsewhere.length > 0
            text: qsTr("Look that way")
            Accessible.description: root.underlay.elsewhere
            onClicked: root.underlay.lookThatWay()
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap

        Note {
            objectName: "underlayHint"
            text: root.underlay.elsewhere + (root.underlay.elsewhere.length > 0 ? " " : "") + root.underlay.hint
                  + (root.underlay.tool === UnderlayViewModel.None ? root.underlay.tiltText : "")
            color: Theme.ink
        }
        LineInput {
            id: length
            objectName: "underlayLengthInput"
            Layout.preferredWidth: 110
            visible: root.underlay.wantsLength
            placeholderText: root.underlay.lengthExample
            maximumLength: 20
            spoken: qsTr("Length between the two points")
            onVisibleChanged: {
                text = ""
                if (visible)
                    forceActiveFocus()
            }
            onAccepted: root.underlay.setLength(text)
        }
        PlainButton {
            objectName: "underlayLengthDone"
            visible: root.underlay.wantsLength
            text: qsTr("Set the scale")
            onClicked: root.underlay.setLength(length.text)
        }
    }
}
