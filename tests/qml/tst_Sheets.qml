import QtQuick
import QtTest
import Underbough.App
import Underbough.Test
import Underbough.Ui

/// The sheets and cards beside the drawing, over the small garden, with mouse and keys.
TestCase {
    id: testCase
    name: "Sheets"
    when: windowShown

    TestPages { id: pages }
    Main {
        id: window
        visible: true
        garden: pages.garden
        side: pages.side
        plan: pages.plan
        round: pages.round
        conditions: pages.conditions
        answers: pages.answers
        work: pages.work
        light: pages.light
        diary: pages.diary
        day: pages.day
        newGarden: pages.newGarden
        addTree: pages.addTree
        planEditor: pages.planEditor
        thing: pages.thing
        tree: pages.tree
        limb: pages.limb
        limbShape: pages.limbShape
        paper: pages.paper
        underlay: pages.underlay
        grounds: pages.grounds
        why: pages.why
        offers: pages.offers
        stages: pages.stages
    }

    function child(name) {
        const item = findChild(window.contentItem, name) ?? findChild(window.contentItem.parent, name)
        verify(item, name)
        return item
    }
    function settle() {
        tryCompare(pages.garden, "isBusy", false, 60000)
    }
    function init() {
        pages.restart()
        window.requestActivate()
        settle()
    }
    function typeInto(name, text) {
        const input = child(name + "Input")
        mouseClick(input)
        input.selectAll()
        for (const letter of text)
            keyClick(letter)
        keyClick(Qt.Key_Return)
    }
    /// The first fact of a card: what it is about, its figure.
    function firstFact(card, prefix) {
        const found = []
        const look = (item) => {
            if (item.factId !== undefined && item.why !== undefined && item.why.startsWith(prefix))
                found.push(item)
            for (let i = 0; i < item.children.length; ++i)
                look(item.children[i])
        }
        look(child(card))
        verify(found.length > 0, card)
        return found[0]
    }

    function test_aLimbsFigureOpensItsChainAndEscapeGoesBack() {
        const row = firstFact("stormCard", "limb:")
        const figure = row.figure
        row.forceActiveFocus()
        keyClick(Qt.Key_Space)
        tryCompare(row, "open", true)
        const button = findChild(row, "why-" + row.why)
        verify(button.visible)
        button.forceActiveFocus()
        keyClick(Qt.Key_Space)
        tryCompare(child("whyPage"), "visible", true)
        verify(!child("answersColumn").visible)
        tryVerify(() => pages.why.title.length > 0, 20000)
        const steps = pages.why.steps
        let seen = false
        for (let i = 0; i < steps.rowCount(); ++i)
            seen = seen || steps.data(steps.index(i, 0), Qt.UserRole + 4) === figure
        verify(seen, figure)
        compare(window.activeFocusItem.objectName, "whyBack")
        keyClick(Qt.Key_Escape)
        tryCompare(child("answersColumn"), "visible", true)
        verify(!child("whyPage").visible)
    }

    function test_theChainOfAStripFollowsTheHand() {
        pages.why.ask("strip:path")
        tryVerify(() => pages.why.answer.length > 0, 20000)
        const answer = pages.why.answer
        pages.side.nudge("bough", 2, 0, 4, true)
        tryVerify(() => pages.why.answer !== answer, 20000)
        pages.why.close()
    }

    function test_aPointOfTheCurveTriesItsCuts() {
        child("showOffers").clicked()
        tryVerify(() => pages.offers.points.rowCount() > 1, 60000)
        tryCompare(pages.offers, "isBusy", false)
        const last = pages.offers.points.rowCount() - 1
        child("offer" + last).clicked()
        tryVerify(() => pages.work.trial.count > 0, 20000)
        verify(!pages.garden.isDirty)
        child("offer0").clicked()
        tryCompare(pages.work.trial, "count", 0)
        child("showOffers").clicked()
        verify(!pages.offers.shown)
    }

    function test_theCurveComesIntoSightByItself() {
        const answers = child("answersColumn")
        const isInSight = () => {
            const curve = child("offerCurve")
            const top = curve.mapToItem(answers, 0, 0).y
            return curve.visible && top >= 0 && top + curve.height <= answers.height
        }
        verify(!isInSight())
        child("showOffers").clicked()
        tryVerify(isInSight, 60000)
        child("showOffers").clicked()
    }

    function test_whoIsExplainedByRulesAndTheirSources() {
        child("whyWho").clicked()
        tryVerify(() => pages.why.steps.rowCount() > 0, 20000)
        pages.why.close()
    }

    function test_aLimbIsTapedInItsSheet() {
        pages.side.chooseLimb("bough")
        mouseClick(child("limbFactsButton"))
        tryVerify(() => findChild(window.overlay ?? window.contentItem.parent, "limbGirthInput") !== null)
        tryVerify(() => child("limbGirthInput").visible)
        typeInto("limbGirth", "40 cm")
        tryCompare(pages.limb, "girth", child("limbGirthInput").text)
        verify(pages.garden.canUndo)
        const before = pages.garden.undoName
        typeInto("limbGirth", "thick")
        compare(pages.garden.undoName, before)
        verify(pages.garden.problem.length > 0)
        keyClick(Qt.Key_Escape)
        mouseClick(child("undoButton"))
        compare(pages.garden.canUndo, false)
    }

    function test_aTreeIsToldAboutInItsSheet() {
        mouseClick(child("treeFactsButton"))
        tryVerify(() => child("treeSheetNameInput").visible)
        typeInto("treeSheetName", "the old maple")
        compare(pages.tree.name, "the old maple")
        typeInto("treeSheetPlanted", "1987")
        compare(pages.tree.planted, "1987")
        typeInto("treeSheetPlanted", "long ago")
        compare(pages.tree.planted, "1987")
        mouseClick(child("sign0"))
        verify(pages.tree.seen[0])
        keyClick(Qt.Key_Escape)
        pages.garden.undo()
        verify(!pages.tree.seen[0])
    }

    function test_aLeafyBodyIsWidenedByItsHandleAndByKeys() {
        pages.side.chooseLimb("bough")
        tryVerify(() => findChild(window.contentItem, "shapeHandle2") !== null)
        const radius = pages.limb.leafRadius
        const handle = child("shapeHandle2")
        verify(handle.width >= 24 && handle.Accessible.name.length > 0)
        handle.forceActiveFocus()
        keyClick(Qt.Key_Up)
        keyClick(Qt.Key_Up)
        verify(pages.limb.leafRadius !== radius)
        keyClick(Qt.Key_Z, Qt.ControlModifier)
        compare(pages.limb.leafRadius, radius)
        const again = child("shapeHandle2")
        mousePress(again)
        mouseMove(again, again.width / 2, again.height / 2 - 12)
        mouseMove(again, again.width / 2, again.height / 2 - 24)
        mouseRelease(again)
        verify(pages.limb.leafRadius !== radius)
        pages.garden.undo()
        compare(pages.limb.leafRadius, radius)
    }

    function test_aPhotoIsDroppedMovedAndScaledByTwoPresses() {
        const drawing = child("sideDrawing")
        verify(pages.drop(drawing, pages.picture("gate.png")))
        verify(pages.underlay.isThere)
        tryVerify(() => child("underlayMove").visible && child("underlayMove").checked)
        const laid = pages.garden.undoName
        drawing.forceActiveFocus()
        keyClick(Qt.Key_Right)
        verify(pages.garden.undoName !== laid)
        mouseClick(child("underlayLength"))
        compare(pages.underlay.tool, UnderlayViewModel.Length)
        mouseClick(drawing, 300, 60)
        verify(!child("underlayLengthInput").visible)
        mouseClick(drawing, 300, 110)
        tryVerify(() => child("underlayLengthInput").activeFocus)
        for (const letter of "2 m")
            keyClick(letter)
        keyClick(Qt.Key_Return)
        compare(pages.underlay.tool, UnderlayViewModel.None)
        compare(pages.garden.problem, "")
        mouseClick(child("underlayAway"))
        verify(!pages.underlay.isThere)
        mouseClick(child("underlayButton"))
        verify(!child("underlayChoose").visible)
    }

    function test_theGardensPlaceSlopeAndMeasuresAreSetInItsSheet() {
        mouseClick(child("gardenFactsButton"))
        tryVerify(() => child("groundsFallInput").visible)
        typeInto("groundsFall", "8 %")
        compare(child("groundsFallInput").text, pages.grounds.fall)
        verify(pages.grounds.fallsTo >= 0 && pages.garden.canUndo)
        const latitude = pages.grounds.latitude
        typeInto("groundsLatitude", "133")
        compare(child("groundsLatitudeInput").text, latitude)
        verify(pages.garden.problem.length > 0)
        typeInto("sunshine3", "40 %")
        compare(child("sunshine3Input").text, pages.grounds.sunshine[3])
        verify(pages.grounds.sunshine[3].length > 0)
        const metric = pages.grounds.gust
        const measure = pages.grounds.measure
        pages.grounds.measure = measure === 2 ? 0 : 2
        verify(pages.grounds.gust !== metric)
        compare(child("groundsGustInput").text, pages.grounds.gust)
        pages.grounds.measure = measure
        compare(pages.grounds.gust, metric)
        keyClick(Qt.Key_Escape)
        settle()
    }

    function test_anotherLanguageIsSpokenFromTheNextStartOn() {
        window.languageCodes = ["de", "en"]
        window.languageNames = ["Deutsch", "English"]
        mouseClick(child("gardenFactsButton"))
        tryVerify(() => child("languageChoiceBox").visible)
        const choice = child("languageChoiceBox")
        compare(choice.count, 3)
        compare(choice.currentIndex, 0)
        compare(child("languageNote").visible, false)
        choice.forceActiveFocus()
        keyClick(Qt.Key_Down)
        compare(window.language, "de")
        compare(child("languageNote").visible, true)
        keyClick(Qt.Key_Up)
        compare(window.language, "")
        compare(child("languageNote").visible, false)
        keyClick(Qt.Key_Escape)
        settle()
    }

    function test_theDaysOfLeafAreTypedInTheTreesSheet() {
        mouseClick(child("treeFactsButton"))
        tryVerify(() => child("treeSheetLeafOnInput").visible)
        typeInto("treeSheetLeafOn", "04-18")
        verify(pages.tree.leafOn.includes("18"))
        typeInto("treeSheetLeafOn", "soon")
        verify(pages.tree.leafOn.includes("18"))
        keyClick(Qt.Key_Escape)
        settle()
    }
}
