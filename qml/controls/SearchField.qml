pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Underbough.Ui

/// A line to type in that offers what fits. Up and Down choose, Enter takes.
TypedField {
    id: root

    /// What fits, as it is read.
    required property var found
    /// Something was taken already: nothing is offered.
    property bool settled: false
    property int at: 0

    signal taken(int index)
    /// The keyboard has gone on to something else.
    signal wentOn
    /// Enter, with nothing left to take: on to the next field.
    signal passed

    readonly property Popup offers: Popup {
        parent: root.field
        y: parent ? parent.height + 4 : 0
        width: parent ? parent.width : 0
        height: Math.min(root.found.length, 8) * Theme.control + 2
        padding: 1
        margins: 4
        closePolicy: Popup.NoAutoClose
        visible: root.found.length > 0 && !root.settled && root.field.activeFocus
        ListView {
            anchors.fill: parent
            objectName: root.objectName + "List"
            clip: true
            model: root.found
            currentIndex: root.at
            delegate: ItemDelegate {
                id: entry

                required property string modelData
                required property int index

                objectName: root.objectName + "Entry" + index
                width: ListView.view ? ListView.view.width : 0
                height: Theme.control
                highlighted: root.at === index
                focusPolicy: Qt.NoFocus
                Accessible.name: modelData
                contentItem: Text {
                    text: entry.modelData
                    font.pixelSize: Theme.body
                    color: Theme.ink
                    verticalAlignment: Text.AlignVCenter
                    elide: Text.ElideRight
                }
                background: Rectangle {
                    color: entry.highlighted || entry.hovered ? Theme.hover : Theme.panel
                }
                onClicked: root.taken(index)
            }
        }
        background: Rectangle {
            radius: Theme.radius
            color: Theme.panel
            border.color: Theme.edge
        }
    }

    help: root.found.length > 0 && !root.settled
          ? qsTr("%1. Up and Down choose, Enter takes.").arg(root.found[root.at] ?? "") : root.hint
    onFoundChanged: root.at = 0
    readonly property bool isHere: root.field.activeFocus
    onIsHereChanged: if (!root.isHere) root.wentOn()
    onEntered: root.offers.visible ? root.taken(root.at) : root.passed()

    Shortcut {
        enabled: root.offers.visible
        sequences: ["Down"]
        onActivated: root.at = Math.min(root.at + 1, root.found.length - 1)
    }
    Shortcut {
        enabled: root.offers.visible
        sequences: ["Up"]
        onActivated: root.at = Math.max(root.at - 1, 0)
    }
}
