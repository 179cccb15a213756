pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The diary: what is due in the garden, the visits to the chosen tree, and what they add up to.
GridLayout {
    id: root

    required property DiaryViewModel diary
    /// The window has no room for three columns: one under the other, rolled with the window.
    property bool narrow: false

    columns: root.narrow ? 1 : 3
    columnSpacing: Theme.wide
    rowSpacing: Theme.wide

    component Lane: Scroller {
        id: scroll
        default property alias content: inside.data
        Layout.fillWidth: root.narrow
        Layout.fillHeight: !root.narrow
        Layout.preferredHeight: root.narrow ? contentHeight : -1

        ColumnLayout {
            id: inside
            width: scroll.availableWidth
            spacing: Theme.gap + 2
        }
    }

    Lane {
        Layout.preferredWidth: 330
        Layout.maximumWidth: root.narrow ? Infinity : 330

        DueCard {
            Layout.fillWidth: true
            diary: root.diary
        }
    }
    Lane {
        id: timeline
        objectName: "timeline"
        Layout.fillWidth: true

        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: 4
            Layout.rightMargin: 4
            Layout.topMargin: 4
            Text {
                Layout.fillWidth: true
                text: root.diary.treeTitle.length > 0 ? qsTr("Visits to %1").arg(root.diary.treeTitle)
                                                      : qsTr("Visits")
                font.pixelSize: Theme.heading
                font.weight: Font.DemiBold
                color: Theme.ink
                wrapMode: Text.WordWrap
            }
            PlainButton {
                objectName: "newVisitButton"
                primary: !root.diary.form.isOpen
                enabled: root.diary.treeTitle.length > 0 && !root.diary.form.isOpen
                text: qsTr("Write a visit\u2026")
                onClicked: root.diary.form.start()
            }
        }
        Text {
            objectName: "nextDue"
            Layout.fillWidth: true
            Layout.leftMargin: 4
            visible: text.length > 0
            text: root.diary.nextDue
            font.pixelSize: Theme.body
            color: Theme.ink
            wrapMode: Text.WordWrap
        }
        VisitSheet {
            Layout.fillWidth: true
            Layout.margins: 4
            visible: root.diary.form.isOpen
            form: root.diary.form
            photos: root.diary.photos
        }
        Note {
            Layout.leftMargin: 4
            visible: visitList.count === 0
            text: qsTr("No visit has been written yet. Earlier ones can be written too: the day is yours to set.")
        }
        Repeater {
            id: visitList
            model: root.diary.visits
            VisitRow { diary: root.diary }
        }
        Note {
            Layout.leftMargin: 4
            visible: root.diary.hasPictures
            text: qsTr("Pictures show the sketch with what each later visit took put back; what was redrawn since shows as it is drawn today.")
        }
    }
    Lane {
        Layout.preferredWidth: 310
        Layout.maximumWidth: root.narrow ? Infinity : 310

        Card {
            objectName: "seasonCard"
            Layout.fillWidth: true
            question: qsTr("How much leaf went this season?")
            headline: root.diary.leafText
            tone: root.diary.taken > root.diary.guideline ? Tone.Grave : Tone.Plain
            stale: root.diary.isBusy

            LeafGauge {
                Layout.fillWidth: true
                Layout.topMargin: 4
                visible: root.diary.guideline > 0
                taken: root.diary.taken
                allowed: root.diary.guideline
                label: root.diary.allowanceText
            }
            Repeater {
                model: root.diary.seasons
                FactRow {}
            }
            Note { text: qsTr("Seasons run from leaf fall to leaf fall.") }
        }
        Card {
            objectName: "growthCard"
            Layout.fillWidth: true
            question: qsTr("How fast does it grow?")
            headline: root.diary.shoots
            tone: Tone.Plain

            Repeater {
                model: root.diary.growth
                Note {
                    required property string modelData
                    text: modelData
                    color: Theme.ink
                }
            }
        }
        Card {
            objectName: "woundCard"
            Layout.fillWidth: true
            visible: root.diary.wounds.length > 0
            question: qsTr("Are the wounds closing?")
            headline: qsTr("As reckoned for the species; look, and note what you see.")
            tone: Tone.Plain

            Repeater {
                model: root.diary.wounds
                ColumnLayout {
                    id: wound
                    required property string modelData
                    required property int index
                    Layout.fillWidth: true
                    spacing: 2
                    Note {
                        text: wound.modelData
                        color: Theme.ink
                    }
                    PlainButton {
                        objectName: "woundClosed" + wound.index
                        visible: root.diary.woundsOpen[wound.index]
                        font.pixelSize: Theme.small
                        text: qsTr("It is closed")
                        Accessible.description: wound.modelData
                        onClicked: root.diary.noteClosed(wound.index)
                    }
                }
            }
            Note { text: qsTr("A wound that is closed can still hide decay.") }
        }
    }
}
