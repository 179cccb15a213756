pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The chosen tree from the side: what it carries, what room it leaves, where to cut.
ColumnLayout {
    id: root

    required property SideViewModel side
    required property LimbShapeViewModel shape
    required property UnderlayViewModel underlay
    /// The page that it stands on is rolled by the wheel, which zooms with Ctrl held then.
    property bool wheelRolls: false

    signal limbFactsWanted
    signal roundWanted

    readonly property alias drawTool: drawButton.checked
    /// The limb's figures stand beside the drawing, which keeps its height.
    readonly property bool beside: root.width >= 680

    spacing: 0

    function focusHandle(limb: string, station: int) {
        for (let i = 0; i < handles.count; ++i) {
            const handle = handles.itemAt(i) as LimbHandle
            if (handle && handle.limbId === limb && handle.station === station)
                handle.forceActiveFocus(Qt.OtherFocusReason)
        }
    }

    function roll(wheel: WheelEvent) {
        wheel.accepted = !root.wheelRolls || (wheel.modifiers & Qt.ControlModifier) !== 0
        if (wheel.accepted)
            root.side.zoom(wheel.x, wheel.y, Math.pow(1.0015, wheel.angleDelta.y))
    }

    /// Back from the picture in three dimensions.
    function takeFocus() {
        roundButton.forceActiveFocus(Qt.OtherFocusReason)
    }

    ViewBar {
        id: bar
        Layout.fillWidth: true
        Layout.margins: Theme.gap
        Layout.leftMargin: Theme.margin
        side: root.side

        PlainButton {
            id: roundButton
            objectName: "roundButton"
            tight: bar.tight
            text: qsTr("All round")
            Accessible.description: qsTr("The tree and its garden in three dimensions, with sun and shadow")
            onClicked: root.roundWanted()
        }
        PlainButton {
            id: drawButton
            objectName: "drawButton"
            tight: bar.tight
            text: qsTr("Draw a limb")
            checkable: true
            enabled: !root.side.showsAfter
            onToggled: root.side.isSawing = false
            Accessible.description: qsTr("Draw one stroke from the limb it grows from. With the keyboard: Insert on a handle.")
        }
        PlainButton {
            objectName: "sawButton"
            tight: bar.tight
            text: qsTr("Try a cut")
            checked: root.side.isSawing
            enabled: !root.side.showsAfter
            Accessible.description: qsTr("Press on a limb where you would cut it, and see what comes of it. With the keyboard: choose a limb, then Try it beside the answers.")
            onClicked: {
                root.side.isSawing = !root.side.isSawing
                drawButton.checked = false
            }
        }
        PlainButton {
            id: underlayButton
            objectName: "underlayButton"
            tight: bar.tight
            text: qsTr("Photo")
            checkable: true
            Accessible.description: qsTr("Lay a photo under the drawing, to draw over it")
            onToggled: if (!checked) root.underlay.tool = UnderlayViewModel.None
        }
    }

    UnderlayBar {
        Layout.fillWidth: true
        Layout.leftMargin: Theme.margin
        Layout.rightMargin: Theme.gap
        Layout.bottomMargin: Theme.gap
        visible: underlayButton.checked
        underlay: root.underlay
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
            side: root.side
            onFactsWanted: root.limbFactsWanted()
        }
        SideDrawing {
            id: drawing
            objectName: "sideDrawing"
            Layout.row: 0
            Layout.column: root.beside ? 1 : 0
            Layout.fillWidth: true
            Layout.fillHeight: true
            side: root.side
            colours: Theme.drawing
            font.pixelSize: Theme.small
            activeFocusOnTab: true
            Accessible.role: Accessible.Graphic
            Accessible.focusable: true
            Accessible.name: qsTr("Side view")
            Accessible.description: qsTr("%1 Plus and minus zoom, arrow keys move the view, 0 shows all.").arg(root.side.summary)

            Keys.onPressed: (event) => {
                event.accepted = drawing.activeFocus
                if (!drawing.activeFocus)
                    return
                const step = event.modifiers & Qt.ShiftModifier ? 20 : 2
                if (root.underlay.tool === UnderlayViewModel.Move) {
                    switch (event.key) {
                    case Qt.Key_Left: root.underlay.nudge(-step, 0); return
                    case Qt.Key_Right: root.underlay.nudge(step, 0); return
                    case Qt.Key_Up: root.underlay.nudge(0, -step); return
                    case Qt.Key_Down: root.underlay.nudge(0, step); return
                    }
                }
                switch (event.key) {
                case Qt.Key_Plus: root.side.zoomMiddle(1.25); break
                case Qt.Key_Minus: root.side.zoomMiddle(0.8); break
                case Qt.Key_0: root.side.fit(); break
                case Qt.Key_Left: root.side.pan(40, 0); break
                case Qt.Key_Right: root.side.pan(-40, 0); break
                case Qt.Key_Up: root.side.pan(0, 40); break
                case Qt.Key_Down: root.side.pan(0, -40); break
                default: event.accepted = false
                }
            }

            MouseArea {
                id: air
                anchors.fill: parent
                preventStealing: root.drawTool // else a second finger may join, to zoom
                cursorShape: root.drawTool || root.side.isSawing ? Qt.CrossCursor : Qt.ArrowCursor
                property point last
                property bool panned: false

                onPressed: (event) => {
                    air.last = Qt.point(event.x, event.y)
                    air.panned = false
                    if (root.drawTool)
                        root.side.beginStroke(event.x, event.y)
                    else
                        root.side.chooseLimbAt(event.x, event.y)
                }
                onPositionChanged: (event) => {
                    const right = event.x - air.last.x
                    const down = event.y - air.last.y
                    if (root.drawTool)
                        root.side.extendStroke(event.x, event.y)
                    else if (air.panned || Math.abs(right) + Math.abs(down) >= 10) {
                        air.panned = true
                        root.side.pan(right, down)
                        air.last = Qt.point(event.x, event.y)
                    }
                }
                onReleased: {
                    if (root.drawTool && root.side.endStroke())
                        drawButton.checked = false
                }
                onWheel: (wheel) => root.roll(wheel)
            }
            MouseArea {
                objectName: "underlayArea"
                anchors.fill: parent
                visible: root.underlay.tool !== UnderlayViewModel.None
                preventStealing: true
                cursorShape: root.underlay.tool === UnderlayViewModel.Move ? Qt.SizeAllCursor : Qt.CrossCursor
                onPressed: (event) => {
                    drawing.forceActiveFocus()
                    root.underlay.press(event.x, event.y)
                }
                onPositionChanged: (event) => root.underlay.dragTo(event.x, event.y)
                onReleased: root.underlay.release()
                onWheel: (wheel) => root.roll(wheel)
            }
            DropArea {
                objectName: "underlayDrop"
                anchors.fill: parent
                keys: ["text/uri-list"]
                onDropped: (drop) => {
                    drop.acceptProposedAction()
                    if (drop.urls.length > 0 && root.underlay.lay(drop.urls[0]))
                        underlayButton.checked = true
                }
            }
            PinchHandler {
                id: pinch

                property real before: 1
                property point at

                target: null
                onActiveChanged: {
                    pinch.before = 1
                    pinch.at = centroid.position
                }
                onActiveScaleChanged: {
                    root.side.zoom(centroid.position.x, centroid.position.y, activeScale / pinch.before)
                    pinch.before = activeScale
                }
                onCentroidChanged: {
                    if (!pinch.active)
                        return
                    root.side.pan(centroid.position.x - pinch.at.x, centroid.position.y - pinch.at.y)
                    pinch.at = centroid.position
                }
            }
            FocusRing {
                around: drawing
                anchors.margins: 1
            }
            Row {
                anchors { right: parent.right; bottom: parent.bottom; margins: Theme.gap }
                spacing: 4

                PlainButton {
                    objectName: "sideCloser"
                    width: Theme.control
                    leftPadding: 0
                    rightPadding: 0
                    text: "+"
                    Accessible.name: qsTr("Larger drawing")
                    onClicked: root.side.zoomMiddle(1.25)
                }
                PlainButton {
                    objectName: "sideFarther"
                    width: Theme.control
                    leftPadding: 0
                    rightPadding: 0
                    text: "\u2212"
                    Accessible.name: qsTr("Smaller drawing")
                    onClicked: root.side.zoomMiddle(0.8)
                }
                PlainButton {
                    objectName: "sideFit"
                    visible: !root.side.isFitted
                    text: qsTr("All of it")
                    Accessible.name: qsTr("Show the whole tree")
                    onClicked: root.side.fit()
                }
            }
            Repeater {
                id: handles
                model: root.side.handles

                LimbHandle {
                    id: limbHandle
                    side: root.side
                    enabled: !root.drawTool && !root.side.isSawing
                    visible: limbHandle.isShown && root.underlay.tool === UnderlayViewModel.None
                }
            }
            Repeater {
                model: root.shape.handles

                ShapeHandle {
                    shape: root.shape
                    enabled: !root.drawTool && !root.side.isSawing
                    visible: root.underlay.tool === UnderlayViewModel.None
                }
            }
            Connections {
                target: root.side
                function onLimbGrown(limb: string, station: int) { root.focusHandle(limb, station) }
            }
        }
    }
}
