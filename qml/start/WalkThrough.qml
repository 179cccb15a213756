pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import QtQuick.Templates as T
import Underbough.Ui

/// A short walk through the window, for who sees it for the first time: one part after the other is
/// ringed and explained beside itself, while all of it can be tried.
Popup {
    id: root

    /// What each step is about, in their order.
    required property var targets
    /// What the ring is drawn on: the window's page.
    required property Item surface
    property int step: 0
    readonly property Item target: targets[step] ?? null
    readonly property bool isLast: step === steps.length - 1
    /// Where the target is in the window.
    property rect spot

    signal ownGardenWanted
    /// The target is to be brought into sight.
    signal pointed(Item target)

    readonly property list<string> titles: [
        qsTr("A tree of somebody else's"), qsTr("What it means"), qsTr("What to cut"),
        qsTr("Wind, day and hour"), qsTr("The garden from above"), qsTr("Now yours")]
    readonly property list<string> steps: [
        qsTr("Here it stands as somebody sees it from the side. Try it out: drag a dot to bend a limb, the slider walks round the tree. Undo takes everything back."),
        qsTr("The answers stand here and follow what you draw: room beneath it, what a storm asks of it, sun for the plants. Press a line to read it in full, and why it is that number."),
        qsTr("The least that has to go for what you want of the tree, in working order. Leave or take a limb, and the rest is found again. Try a cut, over the drawing, shows what a cut of your own would do."),
        qsTr("All answers are for the wind, the day and the hour that are set here."),
        qsTr("What lies under the tree and beside it: paths, hedges, beds, buildings, wires. Draw on the plan makes it large."),
        qsTr("New starts your garden: its place, then a tree, by its kind and a tape round its stem. F1 shows this walk again. What you read are estimates from a sketch: none of it says that a tree is safe.")]

    function start() {
        root.step = 0
        root.open()
    }
    function go(step: int) {
        root.step = step
        root.place()
        next.forceActiveFocus(Qt.OtherFocusReason)
    }
    function place() {
        if (!root.target || !root.parent)
            return
        root.pointed(root.target)
        root.look()
    }
    function look() {
        if (root.target && root.parent)
            root.spot = root.target.mapToItem(root.parent, 0, 0, root.target.width, root.target.height)
    }

    readonly property bool narrow: !root.parent || root.parent.width < 1100
    readonly property bool isWide: spot.width > 0.8 * (root.parent?.width ?? 0)

    parent: T.Overlay.overlay
    width: narrow ? parent.width - 2 * Theme.gap : 380
    x: narrow ? Theme.gap
     : isWide ? (parent.width - width) / 2
     : spot.x + spot.width / 2 < parent.width / 2
       ? Math.min(spot.x + spot.width + Theme.margin, parent.width - width - Theme.margin)
       : Math.max(Theme.margin, spot.x - width - Theme.margin)
    y: narrow ? parent.height - height - Theme.gap
     : isWide ? spot.y + spot.height + Theme.margin
     : Math.max(Theme.margin, Math.min(spot.y + 40, parent.height - height - Theme.margin))
    padding: Theme.wide
    focus: true
    modal: false
    closePolicy: Popup.CloseOnEscape
    onOpened: root.go(root.step)

    background: Rectangle {
        radius: Theme.radius
        color: Theme.panel
        border.width: 2
        border.color: Theme.focus
    }
    Timer { // parts move while answers come in
        interval: 200
        repeat: true
        running: root.opened
        onTriggered: root.look()
    }
    Rectangle {
        objectName: "walkRing"
        parent: root.surface // a child of the overlay would hold it open
        z: 1000
        visible: root.opened
        x: root.spot.x - 4
        y: root.spot.y - 4
        width: root.spot.width + 8
        height: root.spot.height + 8
        radius: Theme.radius + 3
        color: "transparent"
        border.width: 4
        border.color: Theme.focus
    }
    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap

        Text {
            Layout.fillWidth: true
            text: qsTr("%1 of %2").arg(root.step + 1).arg(root.steps.length)
            font.pixelSize: Theme.small
            color: Theme.softInk
        }
        Text {
            Layout.fillWidth: true
            text: root.titles[root.step]
            font.pixelSize: Theme.lead
            font.weight: Font.DemiBold
            color: Theme.ink
            wrapMode: Text.WordWrap
        }
        Text {
            objectName: "walkText"
            Layout.fillWidth: true
            text: root.steps[root.step]
            font.pixelSize: Theme.body
            color: Theme.ink
            wrapMode: Text.WordWrap
            lineHeight: 1.15
            Accessible.role: Accessible.StaticText
            Accessible.name: text
        }
        RowLayout {
            Layout.topMargin: Theme.gap
            spacing: Theme.gap

            PlainButton {
                objectName: "walkEnd"
                text: root.isLast ? qsTr("Stay here") : qsTr("Enough")
                Accessible.description: qsTr("Ends the walk; F1 shows it again")
                onClicked: root.close()
            }
            Item { Layout.fillWidth: true }
            PlainButton {
                objectName: "walkBack"
                text: qsTr("Back")
                enabled: root.step > 0
                onClicked: root.go(root.step - 1)
            }
            PlainButton {
                id: next
                objectName: "walkNext"
                primary: true
                text: root.isLast ? qsTr("A garden of my own") : qsTr("Next")
                Accessible.description: root.titles[root.step] + ". " + root.steps[root.step]
                onClicked: {
                    if (!root.isLast) {
                        root.go(root.step + 1)
                        return
                    }
                    root.close()
                    root.ownGardenWanted()
                }
            }
        }
    }
}
