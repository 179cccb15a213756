pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The gardener's questions, answered one under the other.
Scroller {
    id: root

    required property AnswersViewModel answers
    required property WorkViewModel work
    required property LightViewModel light
    required property DayViewModel day
    required property WhyViewModel why
    required property OffersViewModel offers
    required property StagesViewModel stages

    /// Cuts that are tried out: with the first, what comes of it is brought into sight.
    readonly property int tried: work.trial.count
    property bool showsTrial: false
    readonly property alias firstCard: roomCard
    readonly property alias workCard: suggestion

    /// A card of it is to be brought into sight.
    signal shown(Item card)

    onTriedChanged: {
        if (root.tried > 0 && !root.showsTrial)
            root.shown(trialCard)
        root.showsTrial = root.tried > 0
    }
    onShown: (card) => root.showTop(card)

    ColumnLayout {
        width: root.availableWidth
        spacing: Theme.gap + 2

        Card {
            id: roomCard
            objectName: "roomCard"
            Layout.fillWidth: true
            question: qsTr("Is there room beneath it?")
            headline: root.answers.roomHeadline
            tone: root.answers.roomTone

            Repeater {
                model: root.answers.room
                FactRow {
                    onChosen: (id) => root.answers.choose(id)
                    onWhyWanted: (why) => root.why.ask(why)
                }
            }
        }
        Card {
            objectName: "stormCard"
            Layout.fillWidth: true
            question: qsTr("What would a storm ask of it?")
            headline: root.answers.stormHeadline
            tone: root.answers.stormTone

            Repeater {
                model: root.answers.storm
                FactRow {
                    onChosen: (id) => root.answers.choose(id)
                    onWhyWanted: (why) => root.why.ask(why)
                }
            }
            Note {
                Layout.topMargin: Theme.gap
                text: root.answers.stormNote
            }
        }
        Card {
            objectName: "sunCard"
            Layout.fillWidth: true
            question: qsTr("Do the plants get their sun?")
            headline: root.answers.sunHeadline
            tone: root.answers.sunTone
            stale: !root.answers.isCurrent
            working: root.answers.isBusy

            Repeater {
                model: root.answers.sun
                FactRow { onWhyWanted: (why) => root.why.ask(why) }
            }
        }
        YearCard {
            Layout.fillWidth: true
            light: root.light
            why: root.why
        }
        TrialCard {
            id: trialCard
            Layout.fillWidth: true
            trial: root.work.trial
            why: root.why
        }
        GoalsCard {
            Layout.fillWidth: true
            goals: root.work.goals
        }
        WorkCard {
            id: suggestion
            Layout.fillWidth: true
            working: root.answers.isBusy
            work: root.work
            why: root.why
        }
        StagesCard {
            Layout.fillWidth: true
            stages: root.stages
        }
        OffersCard {
            id: offersCard
            Layout.fillWidth: true
            offers: root.offers
            onUnfolded: root.shown(offersCard)
        }
        Card {
            objectName: "holdCard"
            Layout.fillWidth: true
            visible: root.work.firstHold.length > 0
            question: qsTr("When must it be cut again?")
            headline: root.work.firstHold
            tone: Tone.Plain
            stale: !root.work.isCurrent
            working: root.answers.isBusy

            Repeater {
                model: root.work.otherHolds
                Note {
                    required property string modelData
                    text: modelData
                    color: Theme.ink
                }
            }
            Note {
                Layout.topMargin: 4
                text: root.work.shoots
            }
        }
        WhoCard {
            Layout.fillWidth: true
            working: root.answers.isBusy
            work: root.work
            why: root.why
        }
        DayCard {
            Layout.fillWidth: true
            day: root.day
        }
    }
}
