import QtQuick
import QtTest
import Underbough.App
import Underbough.Ui

TestCase {
    id: testCase
    name: "Controls"
    width: 400
    height: 300
    visible: true
    when: windowShown

    Component {
        id: factRow
        FactRow {
            width: 300
            subject: "north scaffold"
            figure: "62 %"
            after: "48 %"
            sentence: "All of it in one sentence."
            tone: Tone.Mind
            factId: "north"
            measure: 0.62
            why: "limb:north"
        }
    }
    Component {
        id: gauge
        LeafGauge {
            width: 300
            taken: 0.1
            allowed: 0.25
            label: "10 % of 25 %"
        }
    }
    Component {
        id: page
        Scroller {
            property alias above: above
            property alias card: card

            width: 300
            height: 200

            Column {
                Rectangle { id: above; width: 100; height: 150 }
                Rectangle { id: card; width: 100; height: 50 }
            }
        }
    }
    SignalSpy { id: chosen; signalName: "chosen" }
    SignalSpy { id: asked; signalName: "whyWanted" }

    function test_anOpenFactSaysWhereItsFigureComesFrom() {
        const row = createTemporaryObject(factRow, testCase)
        const button = findChild(row, "why-limb:north")
        verify(button && !button.visible)
        mouseClick(row, 20, 8)
        tryCompare(button, "visible", true)
        asked.target = row
        asked.clear()
        wait(0) // for the row to lie out
        mouseClick(button)
        compare(asked.count, 1)
        compare(asked.signalArguments[0][0], "limb:north")
    }

    function test_aFactOpensToItsSentenceAndPointsAtItsLimb() {
        const row = createTemporaryObject(factRow, testCase)
        chosen.target = row
        chosen.clear()
        const closed = row.implicitHeight
        mouseClick(row)
        tryVerify(() => row.implicitHeight > closed)
        compare(chosen.count, 1)
        compare(chosen.signalArguments[0][0], "north")
        compare(row.Accessible.name, "north scaffold: 62 %, after the cuts 48 %")
    }

    function test_aFactIsReachedAndOpenedByKeys() {
        const row = createTemporaryObject(factRow, testCase)
        row.forceActiveFocus(Qt.TabFocusReason)
        verify(row.activeFocus)
        keyClick(Qt.Key_Space)
        verify(row.open)
    }

    function test_aCardIsHeldAtTheTopWhileThePageIsLaidOut() {
        const item = createTemporaryObject(page, testCase)
        const top = () => item.card.mapToItem(item, 0, 0).y
        item.showTop(item.card)
        verify(top() > 0) // nothing is to be rolled yet
        item.card.height = 400
        tryVerify(() => top() === 0)
        item.above.height = 300
        tryVerify(() => top() === 0)
        mouseWheel(item, 100, 100, 0, 120)
        tryVerify(() => top() > 0)
        item.above.height = 400
        tryCompare(item.card, "y", 400)
        verify(top() > 90) // whoever rolls is let be
    }

    function test_theGaugeTellsItsShare() {
        const item = createTemporaryObject(gauge, testCase)
        compare(item.Accessible.description, "10 % of 25 %")
    }
}
