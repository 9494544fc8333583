package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairdown.attempt.Mark;
import pairdown.debrief.Debrief;
import pairdown.pair.GateHeld;
import pairdown.pair.PairDebrief;
import pairdown.replay.SyntheticDebrief;
import pairdown.safety.Finding;
import pairdown.words.Units;
import pairdown.words.Words;

class BoardPageTest {
    private static final Words WORDS = Words.of(Locale.ENGLISH);

    /** As it is without a slot. */
    private static final GateHeld UNTOLD =
            new GateHeld(
                    30,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    0,
                    OptionalDouble.empty(),
                    0,
                    GateHeld.Verdict.NO_DATA);

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 3, 4, 14, 40})
    void howeverManyFlewTheBoardIsOneSheet(int flyers) throws Exception {
        checkOneSheet(withFlyers(flyers, true), flyers);
    }

    /** Their lines say more: whose gap is none, and what can't be told. */
    @ParameterizedTest
    @ValueSource(ints = {3, 12, 14, 40})
    void soItIsWithoutSlots(int flyers) throws Exception {
        checkOneSheet(withFlyers(flyers, false), flyers);
    }

    private static void checkOneSheet(Debrief debrief, int flyers) throws Exception {
        String page = Report.html(debrief, notes(), Units.MILES, WORDS, new Drawn());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ReportPdf.write(boardOf(page), bytes);
        try (PDDocument pdf = Loader.loadPDF(bytes.toByteArray())) {
            String said = new PDFTextStripper().getText(pdf);
            assertEquals(1, pdf.getNumberOfPages(), said);
            assertTrue(said.startsWith("Board page"), said);
            assertTrue(said.contains("Next gate:"), said);
            assertTrue(said.contains("may have happened all the same"), said);
            assertTrue(said.contains("left side was late"), said);
            assertTrue(flyers <= 14 || said.contains("and 26 more"), said);
        }
    }

    /** The page with nothing but its board, and the lettering that charts refer to. */
    private static String boardOf(String page) {
        int board = page.indexOf("<section class=\"sheet board");
        int end = page.indexOf("</section>", board);
        int outlines = page.lastIndexOf("<svg");
        return page.substring(0, page.indexOf("<header>"))
                + page.substring(board, end)
                + "</section>"
                + page.substring(outlines);
    }

    private static List<Mark> notes() {
        Debrief debrief = new SyntheticDebrief().build();
        return List.of(
                new Mark(
                        debrief.axis().instant(70),
                        Mark.Kind.MOMENT,
                        List.of(),
                        "the left side was late and came in from above",
                        Optional.empty()));
    }

    /** The made-up attempt with its flyers again and again, and a finding for each two of them. */
    private static Debrief withFlyers(int flyers, boolean slots) {
        Debrief two = new SyntheticDebrief().build();
        List<PairDebrief> pairs = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < flyers; i++) {
            pairs.add(named("flyer" + i, two.pairs().get(i % 2), slots));
            for (int k = 0; k < i; k++) {
                findings.add(separation(i, k));
            }
        }
        return new Debrief(
                two.attempt(),
                two.settings(),
                two.axis(),
                two.frame(),
                two.span(),
                two.clock(),
                two.heights(),
                two.quality(),
                two.wind(),
                two.participants(),
                two.events(),
                pairs,
                two.tailControl(),
                findings,
                two.notes());
    }

    private static PairDebrief named(String flyer, PairDebrief p, boolean slots) {
        return new PairDebrief(
                p.lead(),
                flyer,
                p.slot().filter(s -> slots),
                p.slotArm().filter(s -> slots),
                p.axes(),
                p.closest(),
                p.leastGap(),
                p.anchoredClosest(),
                p.matched(),
                slots ? p.gateHeld() : Optional.of(UNTOLD),
                p.onTarget(),
                p.touch(),
                p.closureExceedances(),
                p.heightLeftAtMatch_s(),
                p.breakOff_s(),
                p.refusals(),
                p.series(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Finding separation(int a, int b) {
        return new Finding(
                "minimumSeparation",
                "flyer" + a,
                Optional.of("flyer" + b),
                Finding.Outcome.CANNOT_TELL,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                30,
                OptionalDouble.empty(),
                "m",
                Optional.of("the log of one of them has a gap where the two were nearest"));
    }
}
