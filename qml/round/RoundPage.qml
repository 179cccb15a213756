pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The chosen tree and its garden in three dimensions: walk round it, see its shadow, see what
/// falls.
ColumnLayout {
    id: root

    required property RoundViewModel round
    required property SideViewModel side
    /// The page that it stands on is rolled by the wheel, which zooms with Ctrl held then.
    property bool wheelRolls: false

    /// Quick 3D needs a graphics card, or a driver that stands in for one.
    readonly property bool canDraw: picture.GraphicsInfo.api !== GraphicsInfo.Unknown
                                    && picture.GraphicsInfo.api !== GraphicsInfo.Software
                                    && picture.GraphicsInfo.api !== GraphicsInfo.Null
                                    && scene.status !== Loader.Error

    readonly property bool beside: root.width >= 680

    signal limbFactsWanted
    signal sideWanted

    spacing: 0

    function load() {
        if (root.canDraw && scene.status === Loader.Null)
            scene.setSource(Qt.resolvedUrl("RoundScene.qml"), { "round": root.round })
    }

    onCanDrawChanged: root.load()
    Component.onCompleted: {
        root.round.colours = Theme.drawing
        root.round.isShown = true
        root.load()
        picture.forceActiveFocus(Qt.OtherFocusReason)
    }
    Component.onDestruction: {
        root.round.isShown = false
        root.round.colours = null
    }

    ViewBar {
        id: bar
        Layout.fillWidth: true
        Layout.margins: Theme.gap
        Layout.leftMargin: Theme.margin
        side: root.side
        prefix: "round"

        PlainButton {
            objectName: "sideButton"
            tight: bar.tight
            text: qsTr("All round")
            checked: true
            Accessible.description: qsTr("Back to the view from the side")
            onClicked: root.sideWanted()
        }
        PlainButton {
            objectName: "roundSawButton"
            tight: bar.tight
            text: qsTr("Try a cut")
            checked: root.side.isSawing
            enabled: !root.side.showsAfter
            Accessible.description: qsTr("Press on a limb where you would cut it, and see what comes of it. With the keyboard: choose a limb, then Try it beside the answers.")
            onClicked: root.side.isSawing = !root.side.isSawing
        }
        PlainButton {
            objectName: "fallingButton"
            tight: bar.tight
            text: qsTr("What falls")
            checked: root.round.showsFalling
            enabled: root.round.hasFalling
            Accessible.description: qsTr("Shows what the cuts take in a colour of its own, and still shows it when they are made")
            onClicked: root.round.showsFalling = !root.round.showsFalling
        }
    }

    GridLayout {
        Layout.fillWidth: true
        Layout.fillHeight: true
        columns: root.beside ? 2 : 1
        columnSpacing: 0
        rowSpacing: 0

        LimbPanel {
            Layout.row: root.beside ? 0 : 1
            Layout.column: 0
            Layout.fillWidth: !root.beside
            Layout.fillHeight: root.beside
            beside: root.beside
            showsLegend: root.canDraw
            side: root.side
            hint: qsTr("Click a limb, or press Page Down, to see its figures.")
            onFactsWanted: root.limbFactsWanted()
        }
        Item {
            id: picture
            objectName: "roundPicture"
            Layout.row: 0
            Layout.column: root.beside ? 1 : 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            clip: true
            activeFocusOnTab: true
            Accessible.role: Accessible.Graphic
            Accessible.focusable: true
            Accessible.name: qsTr("Tree and garden in three dimensions")
            Accessible.description: qsTr("%1 Arrow keys walk round and look from higher or lower, plus and minus go nearer or farther, 0 shows the whole tree, Page Down and Page Up choose the next limb and the one before.").arg(root.round.summary)

            onWidthChanged: root.round.resize(width, height)
            onHeightChanged: root.round.resize(width, height)

            Keys.onPressed: (event) => {
                event.accepted = picture.activeFocus
                if (!picture.activeFocus)
                    return
                switch (event.key) {
                case Qt.Key_Left: root.round.walk(-1, 0); break
                case Qt.Key_Right: root.round.walk(1, 0); break
                case Qt.Key_Up: root.round.walk(0, 1); break
                case Qt.Key_Down: root.round.walk(0, -1); break
                case Qt.Key_Plus: root.round.zoom(1.25); break
                case Qt.Key_Minus: root.round.zoom(0.8); break
                case Qt.Key_0: root.round.fit(); break
                case Qt.Key_PageDown: root.round.chooseNext(1); break
                case Qt.Key_PageUp: root.round.chooseNext(-1); break
                default: event.accepted = false
                }
            }

            Loader {
                id: scene
                anchors.fill: parent
            }
            Text {
                objectName: "roundMissing"
                anchors { fill: parent; margins: 2 * Theme.margin }
                visible: !root.canDraw
                text: qsTr("Here the window is drawn without a graphics card, so the tree can't be shown in three dimensions. The view from the side and the plan show the same tree.")
                font.pixelSize: Theme.lead
                color: Theme.ink
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                wrapMode: Text.WordWrap
                Accessible.role: Accessible.StaticText
                Accessible.name: text
            }
            Repeater {
                model: root.canDraw ? root.round.quarters : []

                Text {
                    id: quarter

                    required property int index
                    required property string modelData
                    readonly property point at: root.round.quarterPlaces[quarter.index] ?? Qt.point(-1000, -1000)

                    objectName: "quarter" + quarter.index
                    x: quarter.at.x - width / 2
                    y: quarter.at.y - height / 2
                    text: quarter.modelData
                    font.pixelSize: quarter.index === 0 ? Theme.heading : Theme.body
                    font.weight: quarter.index === 0 ? Font.Bold : Font.Normal
                    color: Theme.ink
                    style: Text.Outline
                    styleColor: Theme.paper
                    Accessible.ignored: true
                }
            }
            Rectangle {
                objectName: "roundCompass"
                anchors { left: parent.left; bottom: parent.bottom; margins: Theme.wide }
                visible: root.canDraw
                width: 40
                height: 40
                radius: 20
                rotation: -root.side.bearing
                color: Theme.panel
                border.color: Theme.edge

                Text {
                    anchors { horizontalCenter: parent.horizontalCenter; top: parent.top; topMargin: 1 }
                    text: "\u25b2"
                    font.pixelSize: Theme.body
                    color: Theme.grave
                    Accessible.ignored: true
                }
                Text {
                    anchors { centerIn: parent; verticalCenterOffset: 5 }
                    text: root.round.quarters[0]
                    font.pixelSize: Theme.small
                    font.weight: Font.Bold
                    color: Theme.ink
                    Accessible.ignored: true
                }
            }
            MouseArea {
                id: air

                property point last
                property bool dragged: false

                anchors.fill: parent
                enabled: root.canDraw
                cursorShape: root.side.isSawing ? Qt.CrossCursor
                           : air.dragged && pressed ? Qt.ClosedHandCursor : Qt.ArrowCursor
                onPressed: (event) => {
                    picture.forceActiveFocus(Qt.MouseFocusReason)
                    air.last = Qt.point(event.x, event.y)
                    air.dragged = false
                }
                onPositionChanged: (event) => {
                    const right = event.x - air.last.x
                    const down = event.y - air.last.y
                    if (!air.dragged && Math.abs(right) + Math.abs(down) < 6)
                        return
                    air.dragged = true
                    root.round.drag(right, down)
                    air.last = Qt.point(event.x, event.y)
                }
                onReleased: (event) => {
                    if (!air.dragged)
                        root.round.chooseAt(event.x, event.y)
                }
                onWheel: (wheel) => {
                    wheel.accepted = !root.wheelRolls || (wheel.modifiers & Qt.ControlModifier) !== 0
                    if (wheel.accepted)
                        root.round.zoom(Math.pow(1.0015, wheel.angleDelta.y))
                }
            }
            PinchHandler {
                id: pinch

                property real before: 1

                target: null
                onActiveChanged: pinch.before = 1
                onActiveScaleChanged: {
                    root.round.zoom(activeScale / pinch.before)
                    pinch.before = activeScale
                }
            }
            FocusRing {
                around: picture
                anchors.margins: 1
            }
            Row {
                anchors { right: parent.right; bottom: parent.bottom; margins: Theme.gap }
                spacing: 4
                visible: root.canDraw

                PlainButton {
                    objectName: "roundCloser"
                    width: Theme.control
                    leftPadding: 0
                    rightPadding: 0
                    text: "+"
                    Accessible.name: qsTr("Nearer")
                    onClicked: root.round.zoom(1.25)
                }
                PlainButton {
                    objectName: "roundFarther"
                    width: Theme.control
                    leftPadding: 0
                    rightPadding: 0
                    text: "\u2212"
                    Accessible.name: qsTr("Farther")
                    onClicked: root.round.zoom(0.8)
                }
                PlainButton {
                    objectName: "roundFit"
                    visible: !root.round.isFitted
                    text: qsTr("All of it")
                    Accessible.name: qsTr("Show the whole tree")
                    onClicked: root.round.fit()
                }
            }
        }
    }
}
