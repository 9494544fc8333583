package pairdown.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import pairdown.debrief.Debrief;
import pairdown.replay.SyntheticDebrief;
import pairdown.words.Units;
import pairdown.words.Words;

/** Which pictures a report asks for, and how it goes on without them. */
class ReportPagePicturesTest {
    private static final Debrief DEBRIEF = new SyntheticDebrief().build();
    private static final Words WORDS = Words.of(Locale.ENGLISH);
    private static final Pattern SOURCE =
            Pattern.compile("src=\"data:image/jpeg;base64,([^\"]+)\"");

    @Test
    void everyPairIsShownAtItsClosestFromThreePlacesAndOnItsWayFromTwo() throws IOException {
        Drawn recorder = new Drawn();
        String page = Report.html(DEBRIEF, List.of(), Units.MILES, WORDS, recorder);
        long pairs = DEBRIEF.pairs().stream().filter(p -> p.closest().isPresent()).count();
        assertTrue(pairs > 0);
        assertEquals(5 * pairs + 1, recorder.views().size());
        assertEquals(3 * pairs + 1, recorder.views().stream().filter(v -> v.nearer() == 1).count());
        assertEquals(recorder.views().size(), sources(page).size());
    }

    @Test
    void theBoardPagesPictureIsGreyAndComesFirst() throws IOException {
        String page = Report.html(DEBRIEF, List.of(), Units.MILES, WORDS, new Drawn());
        List<BufferedImage> shown = sources(page);
        assertEquals(1, shown.get(0).getRaster().getNumBands());
        assertEquals(3, shown.get(1).getRaster().getNumBands());
    }

    @Test
    void whereNothingCanDrawTheReportSaysWhatWouldMendIt() throws IOException {
        String page = Report.html(DEBRIEF, List.of(), Units.MILES, WORDS, new Unable());
        assertTrue(page.contains("install libsomething"), "the mend is missing");
        assertFalse(page.contains("<img"));
    }

    @Test
    void picturesThatNobodyWantedAreNotMissed() throws IOException {
        String page = Report.html(DEBRIEF, List.of(), Units.MILES, WORDS, Pictures.NONE);
        assertFalse(page.contains("no pictures"));
        assertFalse(page.contains("<img"));
    }

    private static List<BufferedImage> sources(String page) throws IOException {
        List<BufferedImage> found = new ArrayList<>();
        Matcher source = SOURCE.matcher(page);
        while (source.find()) {
            byte[] bytes = Base64.getDecoder().decode(source.group(1));
            found.add(ImageIO.read(new ByteArrayInputStream(bytes)));
        }
        return found;
    }

    private static final class Unable implements Pictures {
        @Override
        public CompletableFuture<Optional<BufferedImage>> order(View view) {
            return CompletableFuture.completedFuture(Optional.empty());
        }

        @Override
        public Optional<String> whyNone() {
            return Optional.of("install libsomething");
        }
    }
}
