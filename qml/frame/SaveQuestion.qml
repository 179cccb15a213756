import QtQuick
import QtQuick.Layouts
import QtQuick.Controls.Basic
import QtQuick.Templates as T
import Underbough.Ui

/// Asks what to do with unsaved changes before they would be left behind.
Dialog {
    id: root

    required property string gardenName

    signal saveChosen
    signal dropChosen

    modal: true
    anchors.centerIn: T.Overlay.overlay
    width: 460
    padding: Theme.margin
    title: qsTr("Save your changes to %1?").arg(root.gardenName)
    closePolicy: Popup.CloseOnEscape

    background: Rectangle {
        radius: Theme.radius
        color: Theme.panel
        border.color: Theme.edge
    }
    header: Text {
        text: root.title
        padding: Theme.margin
        bottomPadding: 0
        font.pixelSize: Theme.heading
        font.weight: Font.DemiBold
        color: Theme.ink
        wrapMode: Text.WordWrap
    }
    contentItem: Text {
        text: qsTr("If you don't save, what you drew since the last save is lost.")
        font.pixelSize: Theme.body
        color: Theme.ink
        wrapMode: Text.WordWrap
    }
    footer: RowLayout {
        spacing: Theme.gap

        Item { Layout.fillWidth: true }
        PlainButton {
            objectName: "dontSaveButton"
            text: qsTr("Don't save")
            onClicked: {
                root.close()
                root.dropChosen()
            }
        }
        PlainButton {
            objectName: "cancelButton"
            text: qsTr("Cancel")
            onClicked: root.close()
        }
        PlainButton {
            objectName: "saveFirstButton"
            primary: true
            focus: true
            text: qsTr("Save")
            Layout.rightMargin: Theme.margin
            Layout.bottomMargin: Theme.margin
            Layout.topMargin: Theme.gap
            onClicked: {
                root.close()
                root.saveChosen()
            }
        }
    }
}
