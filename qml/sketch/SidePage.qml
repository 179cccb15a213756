pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The chosen tree from the side: what it carries, what room it leaves, where to cut.
ColumnLayout {
    id: root

    required property SideViewModel side
    readonly property alias drawTool: drawButton.checked

    spacing: 0

    function focusHandle(limb: string, station: int) {
        for (let i = 0; i < handles.count; ++i) {
            const handle = handles.itemAt(i) as LimbHandle
            if (handle && handle.limbId === limb && handle.station === station)
                handle.forceActiveFocus(Qt.OtherFocusReason)
        }
    }

    RowLayout {
        Layout.fillWidth: true
        Layout.margins: Theme.gap
        Layout.leftMargin: Theme.margin
        spacing: Theme.gap

        WalkRound { side: root.side }
        Item { Layout.fillWidth: true }
        PlainButton {
            id: drawButton
            objectName: "drawButton"
            text: qsTr("Draw a limb")
            checkable: true
            enabled: !root.side.showsAfter
            Accessible.description: qsTr("Draw one stroke from the limb it grows from. With the keyboard: Insert on a handle.")
        }
        Item { implicitWidth: Theme.gap }
        PlainButton {
            objectName: "nowButton"
            text: qsTr("As it stands")
            checked: !root.side.showsAfter
            onClicked: root.side.showsAfter = false
        }
        PlainButton {
            objectName: "afterButton"
            text: qsTr("After the cuts")
            checked: root.side.showsAfter
            enabled: root.side.hasAfter
            onClicked: root.side.showsAfter = true
        }
    }

    SideDrawing {
        id: drawing
        objectName: "sideDrawing"
        Layout.fillWidth: true
        Layout.fillHeight: true
        side: root.side
        colours: Theme.drawing
        font.pixelSize: Theme.small
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Side view")
        Accessible.description: root.side.summary

        LoadLegend {
            x: Theme.margin
            y: Theme.wide
            side: root.side
        }
        MouseArea {
            anchors.fill: parent
            preventStealing: true
            cursorShape: root.drawTool ? Qt.CrossCursor : Qt.ArrowCursor
            onPressed: (event) => root.drawTool ? root.side.beginStroke(event.x, event.y)
                                                : root.side.chooseLimbAt(event.x, event.y)
            onPositionChanged: (event) => {
                if (root.drawTool)
                    root.side.extendStroke(event.x, event.y)
            }
            onReleased: {
                if (root.drawTool && root.side.endStroke())
                    drawButton.checked = false
            }
        }
        Repeater {
            id: handles
            model: root.side.handles

            LimbHandle {
                side: root.side
                enabled: !root.drawTool
            }
        }
        Connections {
            target: root.side
            function onLimbGrown(limb: string, station: int) { root.focusHandle(limb, station) }
        }
    }

    LimbBar {
        Layout.fillWidth: true
        Layout.leftMargin: Theme.margin
        Layout.rightMargin: Theme.gap
        Layout.topMargin: Theme.gap
        Layout.bottomMargin: Theme.gap
        side: root.side
    }
}
