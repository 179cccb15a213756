import QtQuick
import QtQuick.Layouts
import Underbough.App
import Underbough.Ui

/// Starts a garden: its name, its place, its wind.
Sheet {
    id: root

    required property NewGardenViewModel garden

    title: qsTr("A new garden")
    doneText: qsTr("Start the garden")
    problem: root.garden.problem
    onOpened: nameField.field.forceActiveFocus(Qt.PopupFocusReason)
    onDoneWanted: {
        if (root.garden.start())
            root.close()
    }

    ColumnLayout {
        anchors.fill: parent
        spacing: Theme.wide

        TypedField {
            id: nameField
            objectName: "newName"
            Layout.fillWidth: true
            label: qsTr("Name")
            value: root.garden.name
            onTyped: (text) => root.garden.name = text
        }
        ColumnLayout {
            spacing: Theme.gap

            SearchField {
                objectName: "newCity"
                Layout.fillWidth: true
                label: qsTr("Nearest city, for sun and clock")
                hint: qsTr("Type a city or a country")
                value: root.garden.cityTyped
                found: root.garden.cities
                onTyped: (text) => root.garden.cityTyped = text
                onTaken: (index) => root.garden.takeCity(index)
            }
            RowLayout {
                spacing: Theme.gap

                TypedField {
                    objectName: "newLatitude"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    label: qsTr("Or latitude, degrees north")
                    hint: qsTr("47.4, or 33.9 S")
                    value: root.garden.latitude
                    onTyped: (text) => root.garden.latitude = text
                }
                TypedField {
                    objectName: "newLongitude"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    label: qsTr("Longitude, degrees east")
                    hint: qsTr("8.5, or 77.0 W")
                    value: root.garden.longitude
                    onTyped: (text) => root.garden.longitude = text
                }
                TypedField {
                    objectName: "newAltitude"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    label: qsTr("Height above the sea")
                    hint: qsTr("Not known: sea level")
                    value: root.garden.altitude
                    onTyped: (text) => root.garden.altitude = text
                }
            }
            Note {
                objectName: "clockText"
                text: root.garden.clockText
            }
        }
        NamedChoice {
            objectName: "newExposure"
            Layout.fillWidth: true
            label: qsTr("What the wind crosses before it reaches the garden")
            model: root.garden.exposures
            currentIndex: root.garden.exposure
            onActivated: (index) => root.garden.exposure = index
        }
        RowLayout {
            spacing: Theme.gap

            NamedChoice {
                objectName: "newGustChoice"
                Layout.fillWidth: true
                label: qsTr("Gusts that your trees should bear")
                model: root.garden.gusts
                currentIndex: root.garden.gustChoice
                displayText: root.garden.gustChoice < 0 ? qsTr("As typed beside") : root.garden.gusts[root.garden.gustChoice]
                onActivated: (index) => root.garden.gustChoice = index
            }
            TypedField {
                objectName: "newGust"
                Layout.preferredWidth: 130
                Layout.maximumWidth: 130
                label: qsTr("Or typed")
                value: root.garden.gust
                help: root.garden.gustWord
                onTyped: (text) => root.garden.gust = text
            }
        }
        Note { text: root.garden.gustWord }
        Note { text: root.garden.measuresText }
    }
}
