import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What the tints mean, and the chosen limb: its name, its measures, what it carries. Beside a drawing,
/// or under it; as large without a limb as with one, so that none moves under the hand that presses it.
Item {
    id: root

    required property SideViewModel side
    /// What to do while no limb is chosen.
    property string hint: qsTr("Click a limb, or Tab to a handle, to see its figures and to change it.")
    /// Beside the drawing, else under it.
    required property bool beside
    /// The limbs are drawn in the tints.
    property bool showsLegend: true
    readonly property bool hasLimb: root.side.chosenLimb.length > 0

    signal factsWanted

    onHeightChanged: weighed.start()
    onBesideChanged: weighed.start()

    Timer { // later: a layout that is being laid out takes no notice of what comes and goes in it
        id: weighed
        interval: 0
        onTriggered: root.low = root.beside && root.height < 350
    }

    /// No room for the tints and a limb's figures one under the other.
    property bool low: false

    implicitWidth: Math.max(root.parent && root.parent.width >= 860 ? 280 : 250, legend.implicitWidth + 48)
    implicitHeight: 236

    Rectangle {
        anchors { right: root.beside ? parent.right : undefined; top: parent.top }
        width: root.beside ? 1 : parent.width
        height: root.beside ? parent.height : 1
        color: Theme.edge
    }
    Scroller {
        id: scroller
        anchors { fill: parent; leftMargin: Theme.margin - 5; rightMargin: Theme.gap
                  topMargin: Theme.gap; bottomMargin: Theme.gap }

        GridLayout {
            x: 5 // room for the ring of what has the focus
            y: 5
            width: scroller.availableWidth - 10
            height: Math.max(implicitHeight, scroller.height - 10)
            columns: root.beside ? 1 : 2
            columnSpacing: 2 * Theme.margin
            rowSpacing: Theme.wide

            LoadLegend {
                id: legend
                // In a low window the chosen limb is told in words in its place.
                visible: root.showsLegend && !(root.low && root.hasLimb)
                Layout.alignment: Qt.AlignTop
                side: root.side
            }
            ColumnLayout {
                Layout.fillWidth: true
                Layout.fillHeight: true
                spacing: Theme.gap

                LineInput {
                    objectName: "limbName"
                    Layout.fillWidth: true
                    text: root.side.limbName
                    enabled: root.hasLimb
                    placeholderText: qsTr("No limb chosen")
                    maximumLength: 80
                    spoken: qsTr("Name of the chosen limb")
                    onEditingFinished: {
                        if (text !== root.side.limbName)
                            root.side.renameLimb(text)
                        text = Qt.binding(() => root.side.limbName)
                    }
                }
                Text {
                    objectName: "limbFactsText"
                    Layout.fillWidth: true
                    text: root.hasLimb ? root.side.limbFacts : root.hint
                    font.pixelSize: Theme.small + 1
                    color: Theme.ink
                    wrapMode: Text.WordWrap
                }
                Text {
                    objectName: "limbLoadText"
                    Layout.fillWidth: true
                    visible: text.length > 0
                    text: root.side.limbLoad
                    font.pixelSize: Theme.small
                    color: Theme.softInk
                    wrapMode: Text.WordWrap
                }
                Item { Layout.fillHeight: true }
                RowLayout {
                    Layout.fillWidth: true
                    visible: root.hasLimb || !root.low
                    spacing: Theme.gap

                    PlainButton {
                        objectName: "limbFactsButton"
                        tight: true
                        text: qsTr("Measure\u2026")
                        Accessible.description: qsTr("Girth by tape, union, leaf, crop and defects of the limb; copy, mirror and split it")
                        enabled: root.hasLimb && !root.side.showsAfter
                        onClicked: root.factsWanted()
                    }
                    PlainButton {
                        objectName: "eraseButton"
                        tight: true
                        text: qsTr("Erase limb")
                        enabled: root.side.canDelete && !root.side.showsAfter
                        onClicked: root.side.deleteLimb()
                    }
                    Item { Layout.fillWidth: true }
                }
            }
        }
    }
}
