import QtQuick
import QtQuick.Controls.Basic
import Underbough.App
import Underbough.Ui

/// A photo at a glance, which opens it in large.
AbstractButton {
    id: root

    required property PhotosViewModel photos
    required property string file
    /// The words under it.
    required property string note
    /// What it is called where it has no words.
    required property string fallback

    implicitWidth: 112
    implicitHeight: 84 + (root.note ? Theme.small + 6 : 0)
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("Show large: %1").arg(root.note || root.fallback)

    contentItem: Item {
        PhotoPicture {
            width: parent.width
            height: 84
            photos: root.photos
            file: root.file
            colours: Theme.drawing
        }
        Text {
            anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
            visible: root.note.length > 0
            text: root.note
            font.pixelSize: Theme.small
            color: Theme.softInk
            elide: Text.ElideRight
        }
    }
    background: Item {
        FocusRing { around: root }
    }
}
