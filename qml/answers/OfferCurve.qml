pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import Underbough.App
import Underbough.Ui

/// Leaf along, what it buys upwards: a staircase, for between two points nothing more is bought. A
/// point that is pressed is taken.
Item {
    id: root

    required property OffersViewModel offers

    readonly property real below: Theme.small + 8
    readonly property real plotHeight: root.height - root.below - inset * 2
    readonly property real inset: 13 // half a point, so that all of it can be pressed
    readonly property real plotWidth: root.width - inset * 2

    function xOf(along: real): real { return root.inset + along * root.plotWidth }
    function yOf(up: real): real { return root.inset + (1 - up) * root.plotHeight }

    implicitHeight: 170

    Rectangle {
        x: root.inset
        y: root.inset
        width: root.plotWidth
        height: root.plotHeight
        color: "transparent"
        border.color: Theme.edge
    }
    Row {
        visible: root.offers.wanted >= 0
        x: root.inset
        y: root.yOf(root.offers.wanted) - 1
        spacing: 4
        Repeater {
            model: Math.max(0, Math.floor(root.plotWidth / 10))
            Rectangle {
                width: 6
                height: 2
                color: Theme.good
            }
        }
    }
    Text {
        visible: root.offers.wanted >= 0
        x: root.inset + 4
        y: root.offers.wanted > 0.5 ? root.yOf(root.offers.wanted) + 3
                                    : root.yOf(root.offers.wanted) - height - 2
        text: root.offers.wantedText
        font.pixelSize: Theme.small
        color: Theme.good
    }
    Repeater {
        model: root.offers.points

        Item {
            id: step

            required property int index
            required property real along
            required property real up
            required property real from
            required property real until
            required property string leaf
            required property string reached
            required property string sentence
            required property bool taken

            Rectangle {
                x: root.xOf(step.along)
                y: root.yOf(step.up) - 1
                width: Math.max(2, root.xOf(step.until) - root.xOf(step.along) + 1)
                height: 2
                color: Theme.accent
            }
            Rectangle {
                x: root.xOf(step.along) - 1
                y: Math.min(root.yOf(step.up), root.yOf(step.from))
                width: 2
                height: Math.abs(root.yOf(step.up) - root.yOf(step.from))
                color: Theme.accent
            }
            AbstractButton {
                id: point
                objectName: "offer" + step.index
                x: root.xOf(step.along) - width / 2
                y: root.yOf(step.up) - height / 2
                width: 26
                height: 26
                Accessible.name: step.sentence
                Accessible.description: step.index > 0 ? qsTr("Press to try its cuts out.") : qsTr("Press to put all back.")
                ToolTip.visible: hovered || visualFocus
                ToolTip.text: step.sentence
                onClicked: root.offers.take(step.index)

                background: Item {
                    Rectangle {
                        anchors.centerIn: parent
                        width: step.taken || point.hovered ? 16 : 12
                        height: width
                        radius: width / 2
                        color: step.taken ? Theme.accent : Theme.panel
                        border.width: 2
                        border.color: Theme.accent
                    }
                    FocusRing {
                        around: point
                        radius: 13
                    }
                }
            }
        }
    }
    Text {
        x: root.inset
        anchors.bottom: parent.bottom
        text: qsTr("no leaf")
        font.pixelSize: Theme.small
        color: Theme.softInk
    }
    Text {
        anchors { right: parent.right; rightMargin: root.inset; bottom: parent.bottom }
        text: qsTr("%1 of the leaf").arg(root.offers.mostText)
        font.pixelSize: Theme.small
        color: Theme.softInk
    }
}
