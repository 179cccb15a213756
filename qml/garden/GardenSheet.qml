pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// The garden itself: its name, its place, its wind, how the ground falls, how often the sun shines,
/// and the measures and the language that are read.
Sheet {
    id: root

    required property GroundsViewModel grounds
    required property string language
    required property list<string> languageCodes
    required property list<string> languageNames
    /// As it was when the program started.
    property string spoken: ""

    signal languageWanted(string code)
    signal walkWanted

    Component.onCompleted: root.spoken = root.language

    title: qsTr("About the garden")
    doneText: qsTr("Done")
    hasCancel: false
    wantedWidth: 700
    onOpened: nameField.field.forceActiveFocus(Qt.PopupFocusReason)
    onDoneWanted: root.close()

    component Heading: Text {
        font.pixelSize: Theme.lead
        font.weight: Font.DemiBold
        color: Theme.ink
    }
    component Part: TypedField {
        Layout.fillWidth: true
        Layout.preferredWidth: 1
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.gap + 2

        RowLayout {
            spacing: Theme.gap

            Part {
                id: nameField
                objectName: "groundsName"
                label: qsTr("Name")
                value: root.grounds.name
                onSettled: (text) => root.grounds.name = text
            }
            NamedChoice {
                objectName: "groundsMeasures"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Measures to read and to type")
                model: root.grounds.measures
                currentIndex: root.grounds.measure
                onActivated: (index) => root.grounds.measure = index
            }
            NamedChoice {
                objectName: "languageChoice"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                label: qsTr("Language")
                model: [qsTr("As the computer has it"), ...root.languageNames]
                currentIndex: root.languageCodes.indexOf(root.language) + 1
                onActivated: (index) => root.languageWanted(index > 0 ? root.languageCodes[index - 1] : "")
            }
        }
        Note {
            objectName: "languageNote"
            visible: root.language !== root.spoken
            text: qsTr("In this language from the next start of the program on.")
        }
        RowLayout {
            spacing: Theme.gap

            Part {
                objectName: "groundsLatitude"
                label: qsTr("Latitude, degrees north")
                value: root.grounds.latitude
                onSettled: (text) => root.grounds.latitude = text
            }
            Part {
                objectName: "groundsLongitude"
                label: qsTr("Longitude, degrees east")
                value: root.grounds.longitude
                onSettled: (text) => root.grounds.longitude = text
            }
            Part {
                objectName: "groundsAltitude"
                label: qsTr("Height above the sea")
                value: root.grounds.altitude
                onSettled: (text) => root.grounds.altitude = text
            }
        }
        RowLayout {
            spacing: Theme.gap

            NamedChoice {
                objectName: "groundsExposure"
                Layout.fillWidth: true
                label: qsTr("What the wind crosses before it reaches the garden")
                model: root.grounds.exposures
                currentIndex: root.grounds.exposure
                onActivated: (index) => root.grounds.exposure = index
            }
            Part {
                objectName: "groundsGust"
                Layout.preferredWidth: 150
                Layout.maximumWidth: 150
                label: qsTr("Gusts to bear")
                value: root.grounds.gust
                onSettled: (text) => root.grounds.gust = text
            }
        }
        RowLayout {
            spacing: Theme.gap

            Part {
                objectName: "groundsFall"
                label: qsTr("Fall of the ground")
                hint: qsTr("level; or 8 %, or 1 in 12")
                value: root.grounds.fall
                onSettled: (text) => root.grounds.fall = text
            }
            NamedChoice {
                objectName: "groundsFallsTo"
                Layout.fillWidth: true
                Layout.preferredWidth: 1
                enabled: root.grounds.fallsTo >= 0
                label: qsTr("Water runs to the")
                model: root.grounds.ways
                currentIndex: root.grounds.fallsTo
                displayText: root.grounds.fallsToText
                onActivated: (index) => root.grounds.fallsTo = index
            }
        }
        Heading { text: qsTr("Bright sunshine, share of the time it could shine") }
        GridLayout {
            Layout.fillWidth: true
            columns: 6
            columnSpacing: Theme.gap
            rowSpacing: Theme.gap

            Repeater {
                model: root.grounds.months

                Part {
                    required property int index
                    required property string modelData

                    objectName: "sunshine" + index
                    label: modelData
                    hint: qsTr("not known")
                    value: root.grounds.sunshine[index]
                    onSettled: (text) => root.grounds.setSunshine(index, text)
                }
            }
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap

            Note { text: root.grounds.sunshineText }
            PlainButton {
                objectName: "forgetSunshine"
                text: qsTr("Not known")
                Accessible.name: qsTr("Forget the sunshine of all months")
                onClicked: root.grounds.forgetSunshine()
            }
        }
        PlainButton {
            objectName: "walkButton"
            text: qsTr("Show me round the window")
            onClicked: root.walkWanted()
        }
    }
}
