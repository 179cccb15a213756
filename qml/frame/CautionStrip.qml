pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The cautions that stand under every answer, always in sight: the gravest in full, and all of
/// them on demand.
Rectangle {
    id: root

    required property WorkViewModel work
    property bool open: false

    implicitHeight: row.implicitHeight + 2 * Theme.gap + 4
    color: Theme.panel
    Accessible.role: Accessible.Note
    Accessible.name: qsTr("Cautions")
    Accessible.description: root.work.allCautions

    Rectangle {
        anchors { left: parent.left; right: parent.right; top: parent.top }
        height: 2
        color: Theme.mind
    }
    RowLayout {
        id: row
        anchors { left: parent.left; right: parent.right; top: parent.top
                  leftMargin: Theme.margin; rightMargin: Theme.margin; topMargin: Theme.gap + 2 }
        spacing: Theme.wide

        Text {
            Layout.alignment: Qt.AlignTop
            text: qsTr("Before you cut")
            font.pixelSize: Theme.body
            font.weight: Font.DemiBold
            color: Theme.mind
        }
        Text {
            objectName: "cautionsText"
            Layout.fillWidth: true
            text: root.open ? root.work.allCautions : root.work.cautionsInSight
            font.pixelSize: Theme.small
            color: Theme.ink
            wrapMode: Text.WordWrap
            lineHeight: 1.2
        }
        PlainButton {
            objectName: "cautionsButton"
            Layout.alignment: Qt.AlignTop
            implicitHeight: 28
            font.pixelSize: Theme.small
            text: root.open ? qsTr("Fewer") : qsTr("All %n cautions", "", root.work.cautions.length)
            onClicked: root.open = !root.open
        }
    }
}
