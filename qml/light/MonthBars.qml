pragma ComponentBehavior: Bound
import QtQuick
import Underbough.App
import Underbough.Ui

/// Twelve bars of sun: filled as far as it reaches the plants, drawn to what the open sky gives. The
/// months that do not count for the plant are faint; dashes stand at what it needs.
Item {
    id: root

    required property MonthModel months
    /// On the bars' scale; less than 0: not known.
    required property real need
    required property real good

    /// The chain behind a month's figures is wanted.
    signal whyWanted(string why)

    readonly property real barHeight: height - letters
    readonly property real letters: Theme.small + 6

    implicitHeight: 96

    Row {
        anchors.fill: parent

        Repeater {
            model: root.months

            Item {
                id: bar

                required property string letter
                required property string sentence
                required property real here
                required property real open
                required property bool growing
                required property int tone
                required property string why

                width: root.width / 12
                height: root.height
                activeFocusOnTab: true
                Accessible.role: Accessible.Button
                Accessible.name: sentence
                Accessible.description: qsTr("Why this number?")
                Accessible.onPressAction: root.whyWanted(bar.why)

                Keys.onReturnPressed: root.whyWanted(bar.why)
                Keys.onEnterPressed: root.whyWanted(bar.why)
                Keys.onSpacePressed: root.whyWanted(bar.why)

                HoverHandler {
                    id: over
                    cursorShape: Qt.PointingHandCursor
                }
                TapHandler { onTapped: root.whyWanted(bar.why) }
                Rectangle {
                    anchors.fill: parent
                    radius: 3
                    color: Theme.hover
                    visible: over.hovered
                }

                Rectangle {
                    x: 3
                    width: parent.width - 6
                    height: bar.open * root.barHeight
                    y: root.barHeight - height
                    radius: 2
                    color: "transparent"
                    border.color: Theme.edge
                    opacity: bar.growing ? 1 : 0.6
                }
                Rectangle {
                    x: 3
                    width: parent.width - 6
                    height: bar.here * root.barHeight
                    y: root.barHeight - height
                    radius: 2
                    color: bar.tone === Tone.Plain ? Theme.accent : Theme.toneInk(bar.tone)
                    opacity: bar.growing ? 1 : 0.35
                }
                Text {
                    anchors { horizontalCenter: parent.horizontalCenter; bottom: parent.bottom }
                    text: bar.letter
                    font.pixelSize: Theme.small
                    color: Theme.softInk
                }
                FocusRing { around: bar }
            }
        }
    }
    Repeater {
        model: [root.need, root.good]

        Row {
            id: line
            required property real modelData
            required property int index
            visible: modelData > 0 && modelData <= 1
            y: root.barHeight * (1 - modelData) - 1
            spacing: 4
            Repeater {
                model: Math.floor(root.width / (line.index === 0 ? 10 : 6))
                Rectangle {
                    width: line.index === 0 ? 6 : 2
                    height: 2
                    color: Theme.ink
                }
            }
        }
    }
}
