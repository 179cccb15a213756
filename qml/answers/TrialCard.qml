pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// What cuts that are only tried out come to.
Card {
    id: root

    required property TrialViewModel trial
    required property WhyViewModel why

    objectName: "trialCard"
    question: qsTr("What if I cut here?")
    headline: root.trial.count > 0 ? root.trial.headline
            : qsTr("Press \u201cTry a cut\u201d, then a limb where you would saw. Nothing is changed by it.")
    tone: root.trial.count > 0 ? root.trial.tone : Tone.Plain
    stale: root.trial.isBusy

    LeafGauge {
        Layout.fillWidth: true
        visible: root.trial.count > 0
        taken: root.trial.leafShare
        allowed: root.trial.allowance
        label: root.trial.leafText
    }
    WhyButton {
        objectName: "whyTrial"
        visible: root.trial.count > 0
        Accessible.description: root.trial.leafText
        onClicked: root.why.ask(root.why.triedKey)
    }
    Repeater {
        model: root.trial.broken
        Note {
            required property string modelData
            text: modelData
            color: Theme.grave
        }
    }
    Repeater {
        model: root.trial.effects
        FactRow {}
    }
    Repeater {
        model: root.trial.cuts

        RowLayout {
            id: row

            required property int index
            required property int number
            required property string instruction
            required property string measures

            Layout.fillWidth: true
            spacing: Theme.gap

            ColumnLayout {
                Layout.fillWidth: true
                spacing: 1

                Text {
                    Layout.fillWidth: true
                    text: qsTr("%1. %2", "number and instruction of a cut").arg(row.number).arg(row.instruction)
                    font.pixelSize: Theme.body
                    color: Theme.ink
                    wrapMode: Text.WordWrap
                }
                Note { text: row.measures }
            }
            PlainButton {
                objectName: "putBack" + row.index
                Layout.alignment: Qt.AlignTop
                text: qsTr("Put back")
                Accessible.name: qsTr("Put back: %1").arg(row.instruction)
                onClicked: root.trial.putBack(row.index)
            }
        }
    }
    Note {
        visible: root.trial.count > 0
        text: root.trial.who
        font.weight: Font.DemiBold
    }
    Flow {
        Layout.fillWidth: true
        Layout.topMargin: Theme.gap
        spacing: Theme.gap

        PlainButton {
            objectName: "tryChosen"
            visible: root.trial.chosenLimb.length > 0
            text: qsTr("Try without %1").arg(root.trial.chosenLimb)
            onClicked: root.trial.takeChosenLimb()
        }
        PlainButton {
            objectName: "tryRenewal"
            visible: root.trial.canRenew
            text: qsTr("Try renewing its fruiting wood")
            onClicked: root.trial.renewChosenLimb()
        }
        PlainButton {
            objectName: "tryOpenMiddle"
            visible: root.trial.canOpenMiddle
            text: qsTr("Try opening the middle")
            onClicked: root.trial.openMiddle()
        }
        PlainButton {
            objectName: "trySuggested"
            visible: root.trial.hasSuggested
            text: qsTr("Start from the suggested cuts")
            onClicked: root.trial.takeSuggested()
        }
        PlainButton {
            objectName: "clearTrial"
            visible: root.trial.count > 0
            text: qsTr("Put all back")
            onClicked: root.trial.clear()
        }
    }
}
