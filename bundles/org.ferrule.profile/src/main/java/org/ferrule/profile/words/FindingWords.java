/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.profile.words;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.passage.FirstContacts;
import org.ferrule.fit.passage.FirstContacts.Meeting;
import org.ferrule.profile.CurveCrossing;
import org.ferrule.profile.LumenLine;
import org.ferrule.profile.LumenPassage;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.quantity.Length;

/** Sentences about what a comparison finds: lumens, first contacts, crossings. */
public final class FindingWords {
    private final ProfileComparison comparison;
    private final ProfileWords words;

    /** Sentences about a comparison. */
    public FindingWords(ProfileComparison comparison, ProfileWords words) {
        this.comparison = comparison;
        this.words = words;
    }

    /** A device: its letter and its name. */
    public String device(int number) {
        return ProfileWords.letter(number) + " " + comparison.devices().get(number).name();
    }

    /** A lumen that is to be passed: its sign and its name, and its narrowest diameter where that is known. */
    public String shortLine(int number) {
        return comparison.lines().get(number).narrowest().map(figure -> words.phrases().fill("line.short",
                named(number), words.lengths().lumen(figure.centre())))
                .orElseGet(() -> words.phrases().fill("line.unknown", named(number)));
    }

    private String named(int number) {
        LumenLine line = comparison.lines().get(number);
        String name = ProfileWords.lineSign(number) + " " + line.name();
        return line.outer().device().lumens().size() > 1
                ? words.phrases().fill("line.label", name, line.lumen().name()) : name;
    }

    /** A lumen that is to be passed, with its diameter as an interval. */
    public String line(int number) {
        LumenLine line = comparison.lines().get(number);
        String named = named(number);
        return line.narrowest()
                .map(figure -> words.phrases().fill("line.narrowest", named,
                        words.inner(figure, line.isAssumed())))
                .orElseGet(() -> words.phrases().fill("line.unknown", named));
    }

    /** What happens to a device in a lumen. */
    public String passage(LumenPassage passage) {
        FirstContacts contacts = passage.contacts();
        String device = ProfileWords.letter(passage.device());
        String line = ProfileWords.lineSign(passage.line());
        if (contacts.stop().isPresent()) {
            return stop(contacts.stop().get(), device, line);
        }
        if (contacts.worst().isEmpty()) {
            return words.phrases().fill(passage.isUnknown() ? "passage.unknown" : "passage.passes", device, line);
        }
        Meeting worst = contacts.worst().get();
        return words.phrases().fill(passage.isUnknown() ? "passage.unknownWorst" : "passage.worst", device, line,
                words.section(worst.at().deviceSection()), along(worst), tip(),
                words.lengths().overlap(worst.clearance().worst()));
    }

    private String stop(Meeting stop, String device, String line) {
        boolean nominal = stop.clearance().nominal().isNegative() && !stop.at().deviceDiameter().centreAssumed()
                && !stop.at().lumenDiameter().centreAssumed();
        Length overlap = nominal ? stop.clearance().nominal() : stop.clearance().best();
        return words.phrases().fill(nominal ? "passage.stop" : "passage.best", device, line,
                words.section(stop.at().deviceSection()), along(stop), tip(),
                words.lengths().lumen(stop.at().lumenDiameter().centre()), words.lengths().overlap(overlap));
    }

    private String along(Meeting meeting) {
        return words.along(meeting.at().deviceStation());
    }

    private String tip() {
        return words.phrases().get("landmark.from.TIP");
    }

    /** All of them. */
    public List<String> passages() {
        return comparison.passages().stream().map(this::passage).toList();
    }

    /** Where two devices cross. */
    public String crossing(CurveCrossing crossing) {
        int larger = crossing.largerBeyond();
        int smaller = larger == crossing.first() ? crossing.second() : crossing.first();
        return words.phrases().fill(crossing.crossing().isUncertain() ? "crossing.uncertain" : "crossing.text",
                ProfileWords.letter(larger), ProfileWords.letter(smaller),
                words.station(crossing.crossing().station(), comparison.landmark()));
    }

    /** All crossings; a sentence that there is none where there is none. */
    public List<String> crossings() {
        return comparison.crossings().isEmpty() ? List.of(words.phrases().get("crossing.none"))
                : comparison.crossings().stream().map(this::crossing).toList();
    }

    /** That a device is not drawn, where the landmark is missing on it. */
    public Optional<String> notPlaced(int device) {
        return comparison.devices().get(device).landmark().isPresent() ? Optional.empty()
                : Optional.of(words.phrases().fill("plot.notPlaced", ProfileWords.letter(device),
                        comparison.devices().get(device).name(), words.landmark(comparison.landmark())));
    }
}
