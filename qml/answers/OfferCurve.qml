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

    readonly property real lineHeight: Theme.small + 6
    readonly property real inset: Theme.control / 2 // half a point, so that all of it can be pressed
    readonly property real leftEdge: Math.max(low.implicitWidth, high.implicitWidth) + 16
    readonly property real topEdge: title.height + 4
    readonly property real plotWidth: root.width - root.leftEdge - inset
    readonly property real plotHeight: root.height - root.topEdge - inset - 2 * root.lineHeight - 4

    function xOf(along: real): real { return root.leftEdge + along * root.plotWidth }
    function yOf(up: real): real { return root.topEdge + root.inset + (1 - up) * root.plotHeight }

    implicitHeight: 230

    Text {
        id: title
        width: parent.width
        text: root.offers.axis
        font.pixelSize: Theme.small
        color: Theme.softInk
        wrapMode: Text.WordWrap
    }
    Rectangle {
        x: root.leftEdge
        y: root.yOf(1)
        width: root.plotWidth
        height: root.plotHeight
        color: "transparent"
        border.color: Theme.edge
    }
    Text {
        id: high
        objectName: "offerBest"
        x: root.leftEdge - width - 14
        y: root.yOf(1) - height / 2
        text: root.offers.highText
        font.pixelSize: Theme.small
        color: Theme.ink
    }
    Text {
        id: low
        objectName: "offerWorst"
        x: root.leftEdge - width - 14
        y: root.yOf(0) - height / 2
        text: root.offers.lowText
        font.pixelSize: Theme.small
        color: Theme.ink
    }
    Row {
        visible: root.offers.wanted >= 0
        x: root.leftEdge
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
        x: root.leftEdge + 6
        y: root.offers.wanted > 0.5 ? root.yOf(root.offers.wanted) + 3
                                    : root.yOf(root.offers.wanted) - height - 2
        z: 1
        leftPadding: 3
        rightPadding: 3
        text: root.offers.wantedText
        font.pixelSize: Theme.small
        color: Theme.good

        Rectangle { // where the stairs pass beneath it
            anchors.fill: parent
            z: -1
            color: Theme.panel
        }
    }
    Rectangle { // as in LeafGauge
        x: root.xOf(1) - 1
        y: root.yOf(1) - 6
        width: 2
        height: root.plotHeight + 12
        color: Theme.ink
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
            required property bool proven

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
                width: Theme.control
                height: Theme.control
                Accessible.name: step.sentence
                Accessible.description: step.index > 0 ? qsTr("Press to try its cuts out.") : qsTr("Press to put all back.")
                onClicked: root.offers.take(step.index)

                background: Item {
                    OfferMark {
                        anchors.centerIn: parent
                        large: step.taken || point.hovered
                        taken: step.taken
                        proven: step.proven
                    }
                    FocusRing {
                        around: point
                        anchors.margins: 3
                        radius: 14
                    }
                }
            }
        }
    }
    Text {
        x: root.leftEdge
        y: root.yOf(0) + 10
        text: qsTr("no leaf")
        font.pixelSize: Theme.small
        color: Theme.softInk
    }
    Text {
        objectName: "offerMost"
        anchors.right: parent.right
        y: root.yOf(0) + 10
        text: qsTr("%1 of the leaf,\nthe most that may go now").arg(root.offers.mostText)
        horizontalAlignment: Text.AlignRight
        font.pixelSize: Theme.small
        color: Theme.softInk
    }
}
