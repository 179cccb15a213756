pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Dialogs
import Underbough.App
import Underbough.Ui

/// Photos side by side; more can be added by a dialog or dropped in.
Item {
    id: root

    required property PhotosViewModel photos
    property var files: []
    property var notes: []
    /// What the names of its parts start with: "tree", "visit0Photo".
    required property string names
    /// What stands behind the button that adds.
    default property alias more: flow.data

    /// Files were chosen or dropped.
    signal photosGiven(var files)
    /// A photo is to be shown in large.
    signal photoWanted(int index)

    implicitHeight: flow.implicitHeight
    implicitWidth: 240

    Rectangle {
        anchors { fill: parent; margins: -4 }
        radius: Theme.radius
        color: Theme.hover
        border { width: 2; color: Theme.accent }
        visible: dropArea.containsDrag
    }
    Flow {
        id: flow
        width: root.width
        spacing: Theme.gap

        Repeater {
            model: root.files
            PhotoThumb {
                required property int index
                required property string modelData
                objectName: root.names + index
                photos: root.photos
                file: modelData
                note: root.notes[index] ?? ""
                fallback: qsTr("photo %1").arg(index + 1)
                onClicked: root.photoWanted(index)
            }
        }
        PlainButton {
            objectName: root.names + "Add"
            font.pixelSize: Theme.small
            enabled: root.photos.canAdd
            text: qsTr("Add photos\u2026")
            Accessible.description: qsTr("Photos can be dropped here too")
            onClicked: dialog.open()
        }
    }
    DropArea {
        id: dropArea
        objectName: root.names + "Drop"
        anchors.fill: parent
        keys: ["text/uri-list"]
        onDropped: (drop) => {
            root.photosGiven(drop.urls)
            drop.acceptProposedAction()
        }
    }
    FileDialog {
        id: dialog
        title: qsTr("Add photos")
        fileMode: FileDialog.OpenFiles
        nameFilters: root.photos.nameFilters
        onAccepted: root.photosGiven(selectedFiles)
    }
}
