pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What the gardener wants of the tree besides headroom: each goal with what became of it, and a
/// line to add one.
Card {
    id: root

    required property GoalsViewModel goals

    objectName: "goalsCard"
    question: qsTr("What else do I want of it?")
    headline: goalList.count > 0 ? "" : qsTr("Nothing beyond headroom over every strip.")
    tone: Tone.Plain
    visible: root.goals.hasTree

    readonly property list<string> kinds: [
        qsTr("Relieve the limbs"), qsTr("Bear a gust"), qsTr("Spare the leaf"),
        qsTr("Give sun"), qsTr("Give light for growth")]
    readonly property list<string> examples: [
        qsTr("to such as 80 %"), qsTr("such as 90 km/h"), qsTr("at most, such as 15 %"),
        qsTr("hours a day, such as 4"), qsTr("mol a day, such as 12")]

    function add() {
        const done = kind.currentIndex === 0 ? root.goals.relieve(amount.text)
                   : kind.currentIndex === 1 ? root.goals.bear(amount.text)
                   : kind.currentIndex === 2 ? root.goals.takeAtMost(amount.text)
                   : kind.currentIndex === 3 ? root.goals.light(planting.currentIndex, amount.text)
                   : root.goals.lightForGrowth(planting.currentIndex, amount.text)
        if (done)
            amount.text = ""
    }

    Repeater {
        id: goalList
        model: root.goals.goals

        RowLayout {
            id: row

            required property int index
            required property string subject
            required property string figure
            required property string sentence
            required property int tone

            Layout.fillWidth: true
            spacing: Theme.gap

            ColumnLayout {
                Layout.fillWidth: true
                spacing: 1

                Text {
                    Layout.fillWidth: true
                    text: row.figure.length > 0 ? row.subject + ": " + row.figure : row.subject
                    font.pixelSize: Theme.body
                    color: Theme.toneInk(row.tone)
                    wrapMode: Text.WordWrap
                    Accessible.description: row.sentence
                }
                Note { text: row.sentence !== row.subject ? row.sentence : "" }
            }
            PlainButton {
                objectName: "dropGoal" + row.index
                Layout.alignment: Qt.AlignTop
                text: qsTr("Drop")
                Accessible.name: qsTr("Drop the goal: %1").arg(row.subject)
                onClicked: root.goals.remove(row.index)
            }
        }
    }
    RowLayout {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        spacing: Theme.gap

        Choice {
            id: kind
            objectName: "goalKind"
            Layout.fillWidth: true
            label: qsTr("What to ask for")
            model: root.goals.plantings.length > 0 ? root.kinds : root.kinds.slice(0, 3)
        }
        Choice {
            id: planting
            objectName: "goalPlanting"
            Layout.preferredWidth: 120
            visible: kind.currentIndex >= 3
            label: qsTr("Planting")
            model: root.goals.plantings
        }
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: Theme.gap

        LineInput {
            id: amount
            objectName: "goalAmount"
            Layout.fillWidth: true
            placeholderText: root.examples[kind.currentIndex] ?? ""
            maximumLength: 20
            spoken: qsTr("How much: %1").arg(placeholderText)
            onAccepted: root.add()
        }
        PlainButton {
            objectName: "addGoal"
            text: qsTr("Ask for it")
            onClicked: root.add()
        }
    }
    PlainButton {
        objectName: "openMiddle"
        visible: root.goals.canOpenMiddle
        text: qsTr("Ask for an open middle of the crown")
        onClicked: root.goals.openMiddle()
    }
}
