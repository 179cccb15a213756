import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// A photo in large: the words under it, the ones beside it, and a way to take it out.
Popup {
    id: root

    required property PhotosViewModel photos

    objectName: "photoSheet"
    modal: true
    focus: true
    padding: Theme.wide
    closePolicy: Popup.CloseOnEscape
    anchors.centerIn: root.parent
    width: root.parent ? root.parent.width - (root.parent.width < 1000 ? 16 : 80) : 1000
    height: root.parent ? root.parent.height - (root.parent.height < 700 ? 16 : 40) : 700
    background: Rectangle {
        radius: Theme.radius
        color: Theme.window
        border.color: Theme.edge
    }
    onOpened: picture.forceActiveFocus()
    onClosed: root.photos.close()

    Connections {
        target: root.photos
        function onShownChanged() {
            if (root.photos.isOpen)
                root.open()
            else
                root.close()
        }
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            Text {
                objectName: "photoTitle"
                Layout.fillWidth: true
                text: root.photos.title
                font.pixelSize: Theme.lead
                font.weight: Font.DemiBold
                color: Theme.ink
                elide: Text.ElideRight
            }
            PlainButton {
                objectName: "photoBefore"
                text: qsTr("Previous")
                enabled: root.photos.place > 0
                onClicked: root.photos.step(-1)
            }
            PlainButton {
                objectName: "photoNext"
                text: qsTr("Next")
                enabled: root.photos.place + 1 < root.photos.count
                onClicked: root.photos.step(1)
            }
            PlainButton {
                objectName: "photoRemove"
                text: qsTr("Take it out")
                Accessible.description: qsTr("It can be brought back with Undo")
                onClicked: root.photos.remove()
            }
            PlainButton {
                objectName: "photoClose"
                primary: true
                text: qsTr("Close")
                onClicked: root.close()
            }
        }
        PhotoPicture {
            id: picture
            objectName: "photoLarge"
            Layout.fillWidth: true
            Layout.fillHeight: true
            photos: root.photos
            file: root.photos.file
            large: true
            colours: Theme.drawing
            activeFocusOnTab: true
            Accessible.role: Accessible.Graphic
            Accessible.name: root.photos.note || root.photos.title
            Keys.onLeftPressed: root.photos.step(-1)
            Keys.onRightPressed: root.photos.step(1)

            FocusRing { around: picture }
        }
        TypedField {
            objectName: "photoNote"
            Layout.fillWidth: true
            label: qsTr("Words under it")
            value: root.photos.note
            maximumLength: 400
            onSettled: (text) => root.photos.setNote(text)
        }
    }
}
