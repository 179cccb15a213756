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
    /// The most that they may cover of a small window.
    property real mostHeight: Infinity
    /// A window so low that there is no room for more than the words.
    readonly property bool low: root.mostHeight < Infinity
    readonly property bool narrow: width < 800 && !root.low

    implicitHeight: rows.implicitHeight + 2 * Theme.gap + 4
    color: Theme.panel
    Accessible.role: Accessible.Note
    Accessible.name: qsTr("Cautions")
    Accessible.description: root.work.allCautions

    Rectangle {
        anchors { left: parent.left; right: parent.right; top: parent.top }
        height: 2
        color: Theme.mind
    }
    GridLayout {
        id: rows
        anchors { left: parent.left; right: parent.right; top: parent.top
                  leftMargin: Theme.margin; rightMargin: Theme.margin; topMargin: Theme.gap + 2 }
        columns: root.narrow ? 2 : 3
        columnSpacing: Theme.wide
        rowSpacing: 4

        Text {
            visible: !root.low || root.open
            Layout.alignment: Qt.AlignTop
            text: qsTr("Before you cut")
            font.pixelSize: Theme.body
            font.weight: Font.DemiBold
            color: Theme.mind
        }
        Scroller {
            id: scroller
            showsBar: true
            Layout.row: root.narrow ? 1 : 0
            Layout.column: root.narrow ? 0 : 1
            Layout.columnSpan: root.narrow ? 2 : 1
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(words.implicitHeight, root.mostHeight - (root.narrow ? 60 : 24))

            Text {
                id: words
                objectName: "cautionsText"
                width: scroller.availableWidth - (root.mostHeight < Infinity ? 2 * Theme.gap : 0)
                text: root.open ? root.work.allCautions : root.work.cautionsInSight
                font.pixelSize: Theme.small
                color: Theme.ink
                wrapMode: Text.WordWrap
                lineHeight: 1.2
            }
        }
        PlainButton {
            objectName: "cautionsButton"
            Layout.row: 0
            Layout.column: root.narrow ? 1 : 2
            Layout.alignment: Qt.AlignTop | Qt.AlignRight
            font.pixelSize: Theme.small
            text: root.open ? qsTr("Fewer") : qsTr("All %n cautions", "", root.work.cautions.length)
            onClicked: root.open = !root.open
        }
    }
}
