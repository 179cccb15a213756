pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Underbough.Ui

/// One thing that a tree is due for.
Rectangle {
    id: root

    required property int index
    required property string treeName
    required property string what
    required property string when
    required property string why
    required property string dueState
    required property string treeId
    required property int tone

    signal chosen(string id)
    signal done(string id)

    Layout.fillWidth: true
    Layout.bottomMargin: 4
    implicitHeight: column.implicitHeight + 2 * Theme.gap
    radius: 6
    color: Theme.paper
    border.color: Theme.edge

    ColumnLayout {
        id: column
        anchors { left: parent.left; right: parent.right; top: parent.top; margins: Theme.gap }
        spacing: 2

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            AbstractButton {
                id: tree
                objectName: "dueTree" + root.index
                Layout.fillWidth: true
                implicitHeight: implicitContentHeight
                Accessible.name: root.treeName + ": " + root.what
                Accessible.description: root.dueState + ". " + root.when + ". " + root.why
                onClicked: root.chosen(root.treeId)

                contentItem: Text {
                    text: root.treeName + ": " + root.what
                    font.pixelSize: Theme.body
                    font.weight: Font.DemiBold
                    color: Theme.ink
                    wrapMode: Text.WordWrap
                }
                background: Item {
                    FocusRing { around: tree }
                }
            }
            Text {
                Layout.alignment: Qt.AlignTop
                text: root.dueState
                font.pixelSize: Theme.small
                font.weight: Font.DemiBold
                color: Theme.toneInk(root.tone)
            }
        }
        Text {
            Layout.fillWidth: true
            text: root.when
            font.pixelSize: Theme.body
            color: Theme.ink
            wrapMode: Text.WordWrap
        }
        Note { text: root.why }
        PlainButton {
            objectName: "dueDone" + root.index
            Layout.topMargin: 4
            font.pixelSize: Theme.small
            text: qsTr("Done\u2026")
            Accessible.name: qsTr("Write the visit that did it: %1, %2").arg(root.treeName).arg(root.what)
            onClicked: root.done(root.treeId)
        }
    }
}
