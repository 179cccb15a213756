pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The visits that the job takes where one isn't enough.
Card {
    id: root

    required property StagesViewModel stages

    objectName: "stagesCard"
    visible: root.stages.isNeeded
    question: qsTr("How many visits will it take?")
    headline: root.stages.headline
    tone: Tone.Plain
    stale: root.stages.isBusy

    WorkingLine {
        Layout.fillWidth: true
        busy: root.stages.isBusy
        label: qsTr("Spreading the work over visits")
        onStopWanted: root.stages.stop()
    }
    Repeater {
        model: root.stages.visits

        ColumnLayout {
            id: visit

            required property int index
            required property string when
            required property string leaf
            required property string cuts
            required property real taken
            required property real allowed

            Layout.fillWidth: true
            Layout.topMargin: Theme.gap
            spacing: 3

            Text {
                Layout.fillWidth: true
                text: qsTr("%1. %2", "number and date of a visit").arg(visit.index + 1).arg(visit.when)
                font.pixelSize: Theme.body
                font.weight: Font.DemiBold
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            LeafGauge {
                Layout.fillWidth: true
                taken: visit.taken
                allowed: visit.allowed
                label: visit.leaf
            }
            Note {
                text: visit.cuts
                color: Theme.ink
            }
        }
    }
}
