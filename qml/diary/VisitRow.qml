pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// One visit of the timeline, with the sketch before and after it.
Rectangle {
    id: root

    required property DiaryViewModel diary
    required property int index
    required property string title
    required property list<string> lines
    /// All lines in one, for a screen reader.
    required property string told
    required property bool hasPictures
    required property string visit
    required property list<string> photoFiles
    required property list<string> photoNotes

    objectName: "visit" + root.index
    Layout.fillWidth: true
    implicitHeight: row.implicitHeight + 2 * Theme.wide
    radius: Theme.radius
    color: Theme.panel
    border.color: Theme.edge
    Accessible.role: Accessible.ListItem
    Accessible.name: root.title
    Accessible.description: root.told

    component Picture: ColumnLayout {
        id: picture
        required property bool after
        required property string caption
        spacing: 2

        VisitPicture {
            Layout.preferredWidth: 132
            Layout.preferredHeight: 120
            diary: root.diary
            row: root.index
            after: picture.after
            colours: Theme.drawing
            Accessible.role: Accessible.Graphic
            Accessible.name: picture.caption
        }
        Note {
            Layout.preferredWidth: 132
            horizontalAlignment: Text.AlignHCenter
            text: picture.caption
        }
    }

    GridLayout {
        id: row
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.wide }
        columns: root.width > 600 ? 2 : 1
        columnSpacing: Theme.wide
        rowSpacing: Theme.gap

        ColumnLayout {
            Layout.fillWidth: true
            Layout.alignment: Qt.AlignTop
            spacing: 3

            Text {
                Layout.fillWidth: true
                text: root.title
                font.pixelSize: Theme.body
                font.weight: Font.DemiBold
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            Repeater {
                model: root.lines
                Text {
                    required property string modelData
                    Layout.fillWidth: true
                    text: modelData
                    font.pixelSize: Theme.small + 1
                    color: Theme.ink
                    wrapMode: Text.WordWrap
                    lineHeight: 1.15
                }
            }
        }
        RowLayout {
            Layout.alignment: Qt.AlignTop
            visible: root.hasPictures
            spacing: Theme.gap

            Picture {
                after: false
                caption: qsTr("before")
            }
            Picture {
                after: true
                caption: qsTr("after")
            }
        }
        PhotoStrip {
            Layout.fillWidth: true
            Layout.columnSpan: row.columns
            Layout.alignment: Qt.AlignTop
            photos: root.diary.photos
            files: root.photoFiles
            notes: root.photoNotes
            names: "visit" + root.index + "Photo"
            onPhotosGiven: (files) => root.diary.photos.add(root.visit, files)
            onPhotoWanted: (index) => root.diary.photos.show(root.visit, root.photoFiles[index])

            PlainButton {
                objectName: "visitRemove" + root.index
                font.pixelSize: Theme.small
                text: qsTr("Take this visit out")
                Accessible.name: qsTr("Take this visit out of the diary: %1").arg(root.title)
                onClicked: root.diary.removeVisit(root.visit)
            }
        }
    }
}
