package pairdown.scene;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import pairdown.debrief.Debrief;
import pairdown.debrief.ParticipantDebrief;
import pairdown.gl.NeedsGl;
import pairdown.gl.NoGraphicsException;
import pairdown.gl.OffscreenContext;
import pairdown.gl.Shaders;
import pairdown.motion.State;
import pairdown.motion.Trajectory;
import pairdown.replay.Recording;
import pairdown.replay.SyntheticDebrief;
import pairdown.replay.ViewState;
import pairdown.theme.Palette;
import pairdown.theme.Sizes;
import pairdown.theme.Theme;
import pairdown.time.Span;
import pairdown.words.Figures;
import pairdown.words.Units;

/** What is made ahead of a window, and how it comes to the card in slices. */
@NeedsGl
class BlueprintTest {
    private static final int WIDTH = 400;
    private static final int HEIGHT = 300;
    private static final int FEW_POINTS = 100;
    private static final Theme LIGHT = new Theme(Palette.LIGHT, Sizes.atPercent(100));
    private static final Figures FIGURES = new Figures(Units.METRIC, Locale.ROOT);

    /** A trajectory that counts how often it is asked. */
    private record Counted(Trajectory of, AtomicInteger asked) implements Trajectory {
        @Override
        public double start_s() {
            return of.start_s();
        }

        @Override
        public double end_s() {
            return of.end_s();
        }

        @Override
        public State at(double t_s) {
            asked.incrementAndGet();
            return of.at(t_s);
        }

        @Override
        public void read(double t_s, double[] into) {
            asked.incrementAndGet();
            of.read(t_s, into);
        }

        @Override
        public List<Span> gaps() {
            return of.gaps();
        }

        @Override
        public int fixCount() {
            return of.fixCount();
        }

        @Override
        public double fixTime_s(int i) {
            return of.fixTime_s(i);
        }
    }

    private static Debrief counted(AtomicInteger asked) {
        Debrief d = new SyntheticDebrief().build();
        List<ParticipantDebrief> counting = new ArrayList<>();
        for (ParticipantDebrief p : d.participants()) {
            counting.add(
                    new ParticipantDebrief(
                            p.participant(),
                            p.trajectory().map(t -> new Counted(t, asked)),
                            p.systems(),
                            p.trueAirspeed_mps(),
                            p.calibratedAirspeed_mps(),
                            p.phases(),
                            p.attitudes()));
        }
        return new Debrief(
                d.attempt(),
                d.settings(),
                d.axis(),
                d.frame(),
                d.span(),
                d.clock(),
                d.heights(),
                d.quality(),
                d.wind(),
                counting,
                d.events(),
                d.pairs(),
                d.tailControl(),
                d.safety(),
                d.notes());
    }

    /**
     * Only what is round the moment drawn is asked for: a state each, some round it for cameras,
     * and sigmas in three blocks of 32 samples, that later frames need none.
     */
    @Test
    void theWindowsThreadReadsNoPaths() throws NoGraphicsException {
        AtomicInteger asked = new AtomicInteger();
        Recording recording = Recording.of(counted(asked));
        Blueprint blueprint = Blueprint.of(recording, Optional.empty());
        int before = asked.getAndSet(0);
        assertTrue(before > 1000, "paths were sampled with " + before);
        try (OffscreenContext context = OffscreenContext.open(WIDTH, HEIGHT);
                Shaders shaders = Shaders.ofJar();
                Diorama diorama = diorama(shaders, blueprint)) {
            diorama.uploadAll();
            draw(context, diorama, recording.beginning_s());
            int each = asked.get() / recording.debrief().participants().size();
            assertTrue(each <= 3 * 32 + 8, "asked " + each);
        }
    }

    @Test
    void pathsThatCameInSlicesAreThoseThatCameAtOnce() throws NoGraphicsException {
        Recording recording = Recording.of(new SyntheticDebrief().build());
        Blueprint whole = Blueprint.of(recording, Optional.empty());
        Blueprint sliced = Blueprint.of(recording, FEW_POINTS);
        assertEquals(whole.paths().points(), sliced.paths().points());
        try (OffscreenContext context = OffscreenContext.open(WIDTH, HEIGHT);
                Shaders shaders = Shaders.ofJar();
                Diorama first = diorama(shaders, whole);
                Diorama second = diorama(shaders, sliced)) {
            first.uploadAll();
            int slices = 1;
            while (second.upload()) {
                slices++;
            }
            int needed = (sliced.paths().points() + FEW_POINTS - 1) / FEW_POINTS;
            assertTrue(needed > 5, "slices " + needed);
            assertEquals(needed, slices);
            double t_s = recording.middle_s();
            assertArrayEquals(draw(context, first, t_s), draw(context, second, t_s));
        }
    }

    private static Diorama diorama(Shaders shaders, Blueprint blueprint) {
        ViewState view = new ViewState(blueprint.recording().debrief());
        return new Diorama(shaders, blueprint, view, Optional.empty());
    }

    private static int[] draw(OffscreenContext context, Diorama diorama, double t_s) {
        diorama.view().playback().seek(t_s);
        context.beginScene();
        diorama.draw(LIGHT, FIGURES, 0, 0, WIDTH, HEIGHT, 0);
        context.endScene();
        return context.read().toImage().getRGB(0, 0, WIDTH, HEIGHT, null, 0, WIDTH);
    }
}
