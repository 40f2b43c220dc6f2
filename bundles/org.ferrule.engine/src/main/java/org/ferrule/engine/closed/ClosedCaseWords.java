/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.engine.closed.RecordTable.Row;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.model.CaseEnd;

/** Says in words what the record of a closed case says. */
public final class ClosedCaseWords {
    private static final int BRIEF_DIGITS = 12;

    private final Phrases phrases = Phrases.beside(ClosedCaseWords.class, "closed");
    private final ClosedCase closed;

    /** Words for a record. */
    public ClosedCaseWords(ClosedCase closed) {
        this.closed = closed;
    }

    /** In a sentence: when it was closed, and how it ended. */
    public String head() {
        return head(closed.closed(), closed.ended());
    }

    /** The same of a case of which only that is known. */
    public static String head(String day, CaseEnd ended) {
        return Phrases.beside(ClosedCaseWords.class, "closed")
                .fill(ended == CaseEnd.CROSSED ? "head.crossed" : "head.stopped", Printable.line(day));
    }

    /** In a sentence: whether the documents are what they were. */
    public String documentsInBrief() {
        long other = closed.documents().stream().filter(document -> document.standing() != Standing.UNCHANGED).count();
        if (closed.documents().isEmpty()) {
            return phrases.get("documents.none");
        }
        return other == 0 ? phrases.get("documents.same")
                : phrases.fill(other == 1 ? "documents.other.one" : "documents.other", Long.toString(other));
    }

    /** Whether every document is what it was, as far as any was noted. */
    public boolean documentsStand() {
        return closed.documents().stream().allMatch(document -> document.standing() == Standing.UNCHANGED);
    }

    /** All parts, fingerprints in full. */
    public List<RecordTable> tables() {
        return Stream.of(plan(), log(), totals(), devices(), documents()).toList();
    }

    /** The plan as it stood. */
    public RecordTable plan() {
        List<PlannedStep> steps = closed.plan();
        return table("plan", steps.isEmpty() ? "plan.none" : "plan.note", List.of("number", "plan.step", "plan.state",
                "plan.equipment"),
                IntStream.range(0, steps.size()).mapToObj(i -> row(Integer.toString(i + 1), steps.get(i).name(),
                        endings(steps.get(i)), equipment(steps.get(i)))).toList());
    }

    private String endings(PlannedStep step) {
        return step.endings().isEmpty() ? phrases.get("plan.notTried")
                : step.endings().stream().map(Ending::word).collect(Collectors.joining(", "));
    }

    private String equipment(PlannedStep step) {
        return step.equipment().stream().map(device -> device.opened().isEmpty() ? device.name()
                : phrases.fill("plan.equipment.opened", device.name(), device.opened().stream().map(this::lot)
                        .collect(Collectors.joining(", "))))
                .collect(Collectors.joining("; "));
    }

    private String lot(UsedDevice device) {
        return device.lot().isEmpty() ? phrases.get("plan.noLot") : phrases.fill("plan.lot", device.lot());
    }

    /** What happened. */
    public RecordTable log() {
        List<LoggedTry> log = closed.log();
        List<String> headings = new ArrayList<>(List.of(phrases.get("number"), phrases.get("log.step"),
                phrases.get("log.ending")));
        Stream.of(Resource.values()).map(this::name).forEach(headings::add);
        headings.add(phrases.get("log.remark"));
        return new RecordTable(phrases.get("log"), log.isEmpty() ? phrases.get("log.none") : "", headings,
                IntStream.range(0, log.size()).mapToObj(i -> logged(i + 1, log.get(i))).toList());
    }

    private Row logged(int number, LoggedTry entry) {
        List<String> cells = new ArrayList<>(List.of(Integer.toString(number),
                entry.planned() ? entry.name() : phrases.fill("log.unplanned", entry.name()), entry.ending().word()));
        for (Resource resource : Resource.values()) {
            cells.add(amount(entry.used(), resource));
        }
        cells.add(entry.remark());
        return row(cells.toArray(String[]::new));
    }

    private static String amount(Map<Resource, BigDecimal> used, Resource resource) {
        return used.containsKey(resource) ? plain(used.get(resource)) : "";
    }

    private String name(Resource resource) {
        return resource == Resource.MONEY && !closed.currency().isEmpty() ? phrases.fill("money", closed.currency())
                : phrases.get(resource.name());
    }

    /** What was used up, against the budgets. */
    public RecordTable totals() {
        return table("totals", "", List.of("totals.resource", "totals.before", "totals.logged", "totals.total",
                "totals.limit", "totals.standing"), closed.totals().stream().map(this::total).toList());
    }

    private Row total(ResourceTotal total) {
        String standing = total.limit().map(limit -> total.exceeded()
                ? phrases.fill("totals.exceeded", plain(total.total().subtract(limit)))
                : phrases.get("totals.within")).orElse("");
        return new Row(printable(name(total.resource()), plain(total.before()), plain(total.logged()),
                plain(total.total()), total.limit().map(ClosedCaseWords::plain).orElse(phrases.get("totals.noLimit")),
                standing), total.exceeded());
    }

    /** The boxes that were opened. */
    public RecordTable devices() {
        return table("devices", closed.devices().isEmpty() ? "devices.none" : "",
                List.of("devices.device", "devices.lot", "devices.expiry"), closed.devices().stream()
                        .map(device -> row(device.name(), noted(device.lot()), noted(device.expiry()))).toList());
    }

    private String noted(String value) {
        return value.isEmpty() ? phrases.get("devices.notNoted") : value;
    }

    /** The documents, with their whole fingerprints. */
    public RecordTable documents() {
        return documents(Integer.MAX_VALUE);
    }

    /** The documents, with as much of their fingerprints as tells them apart. */
    public RecordTable documentsInShort() {
        return documents(BRIEF_DIGITS);
    }

    private RecordTable documents(int digits) {
        return table("documents", closed.documents().isEmpty() ? "documents.none" : "",
                List.of("documents.file", "documents.revision", "documents.now", "documents.sha256"),
                closed.documents().stream().map(document -> new Row(printable(document.file(),
                        noted(document.revision()), document.standing().word(), digits(document.sha256(), digits)),
                        document.standing() != Standing.UNCHANGED)).toList());
    }

    private static String digits(String sha256, int most) {
        return sha256.length() <= most ? sha256 : sha256.substring(0, most) + "\u2026";
    }

    private RecordTable table(String title, String note, List<String> headings, List<Row> rows) {
        return new RecordTable(phrases.get(title), note.isEmpty() ? "" : phrases.get(note),
                headings.stream().map(phrases::get).toList(), rows);
    }

    private static Row row(String... cells) {
        return new Row(printable(cells), false);
    }

    private static List<String> printable(String... cells) {
        return Stream.of(cells).map(Printable::line).toList();
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
