pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The chosen tree itself: its name, how it fares, what was seen of it.
Sheet {
    id: root

    required property TreeViewModel tree
    required property PhotosViewModel photos

    title: root.tree.species
    doneText: qsTr("Done")
    hasCancel: false
    onOpened: nameField.field.forceActiveFocus(Qt.PopupFocusReason)
    onDoneWanted: root.close()

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.wide

        RowLayout {
            spacing: Theme.gap

            TypedField {
                id: nameField
                objectName: "treeSheetName"
                Layout.fillWidth: true
                label: qsTr("What you call it")
                value: root.tree.name
                onSettled: (text) => root.tree.name = text
            }
            TypedField {
                objectName: "treeSheetPlanted"
                Layout.preferredWidth: 140
                Layout.maximumWidth: 140
                label: qsTr("Planted in")
                hint: qsTr("not known")
                value: root.tree.planted
                onSettled: (text) => root.tree.planted = text
            }
        }
        RowLayout {
            spacing: Theme.gap

            NamedChoice {
                objectName: "treeSheetVigour"
                Layout.fillWidth: true
                label: qsTr("How it fares")
                model: root.tree.vigours
                currentIndex: root.tree.vigour
                onActivated: (index) => root.tree.vigour = index
            }
            NamedChoice {
                objectName: "treeSheetProtection"
                Layout.fillWidth: true
                label: qsTr("Protected?")
                model: root.tree.protections
                currentIndex: root.tree.protection
                onActivated: (index) => root.tree.protection = index
            }
        }
        RowLayout {
            visible: root.tree.dropsLeaf
            spacing: Theme.gap

            TypedField {
                objectName: "treeSheetLeafOn"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Its buds break on")
                hint: qsTr("by species and place")
                value: root.tree.leafOn
                onSettled: (text) => root.tree.leafOn = text
            }
            TypedField {
                objectName: "treeSheetLeafOff"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Half of its leaves are down on")
                hint: qsTr("by species and place")
                value: root.tree.leafOff
                onSettled: (text) => root.tree.leafOff = text
            }
        }
        Text {
            text: qsTr("What you see from the ground")
            font.pixelSize: Theme.lead
            font.weight: Font.DemiBold
            color: Theme.ink
        }
        GridLayout {
            columns: 2
            columnSpacing: Theme.wide
            rowSpacing: 2

            Repeater {
                model: root.tree.signs

                Tick {
                    required property int index
                    required property string modelData

                    objectName: "sign" + index
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    text: modelData
                    checked: root.tree.seen[index]
                    onToggled: root.tree.setSeen(index, checked)
                }
            }
        }
        Text {
            text: qsTr("Photos")
            font.pixelSize: Theme.lead
            font.weight: Font.DemiBold
            color: Theme.ink
        }
        PhotoStrip {
            Layout.fillWidth: true
            photos: root.photos
            files: root.photos.treeFiles
            notes: root.photos.treeNotes
            names: "tree"
            onPhotosGiven: (files) => root.photos.add("", files)
            onPhotoWanted: (index) => root.photos.show("", root.photos.treeFiles[index])
        }
        PlainButton {
            objectName: "treeSheetRemove"
            text: qsTr("Take this tree out of the garden")
            onClicked: {
                root.close()
                root.tree.remove()
            }
        }
    }
}
