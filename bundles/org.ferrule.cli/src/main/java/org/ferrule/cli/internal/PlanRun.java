/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

import org.ferrule.chart.page.PaperFormat;
import org.ferrule.engine.content.SheetContents;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.limits.CaseLimit;
import org.ferrule.engine.limits.CaseLimits;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Planner;
import org.ferrule.escalation.state.CaseFile;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.io.json.AtomicFiles;
import org.ferrule.io.pdf.PdfWriter;
import org.ferrule.io.svg.SvgWriter;
import org.ferrule.model.ShelfDocument;
import org.ferrule.picture.Document;
import org.ferrule.plansheet.page.PlanSheet;
import org.ferrule.plansheet.page.SheetContent;
import org.ferrule.plansheet.why.OrderReasons;
import org.ferrule.plansheet.words.PlanWords;

/** A case that is read and planned. */
public final class PlanRun {
    private final Path file;
    private final OpenCase open;
    private final AssembledCase assembled;
    private final Plan plan;

    private PlanRun(Path file, OpenCase open, AssembledCase assembled, Plan plan) {
        this.file = file;
        this.open = open;
        this.assembled = assembled;
        this.plan = plan;
    }

    /** Reads and plans a case, on another day where one is named. */
    public static PlanRun of(Path file, Optional<LocalDate> day) {
        return of(file, new DocumentFiles().caseFile(file), day);
    }

    /** Reads and plans a case with that shelf in place of its own. */
    public static PlanRun with(ShelfDocument shelf, Path file, Optional<LocalDate> day) {
        OpenCase own = new DocumentFiles().caseFile(file);
        return of(file, new OpenCase(own.file(), own.libraries(), own.rules(), own.techniques(), Optional.of(shelf)),
                day);
    }

    private static PlanRun of(Path file, OpenCase open, Optional<LocalDate> day) {
        try {
            AssembledCase assembled = open.assemble(
                    Extensions.ofClassPath(PlanRun.class.getClassLoader()).checks(), LocalDate.now());
            CaseFile planned = day.map(d -> on(assembled.file(), d)).orElse(assembled.file());
            return new PlanRun(file, open, assembled,
                    new Planner(assembled.instruments(), assembled.ladder()).plan(planned, assembled.stock()));
        } catch (RuleSetException e) {
            throw new CommandLineException(file + ": " + e.getMessage());
        }
    }

    private static CaseFile on(CaseFile file, LocalDate day) {
        return new CaseFile(file.title(), day, file.system(), file.target(), file.deliver(), file.facts(), file.aim(),
                file.spent(), file.log());
    }

    public Plan plan() {
        return plan;
    }

    public AssembledCase assembled() {
        return assembled;
    }

    public PlanWords words() {
        return SheetContents.words(open, assembled);
    }

    /** Limits and scores from what the case states. */
    public List<CaseLimit> limits() {
        return CaseLimits.of(open.file(), plan);
    }

    /** What cannot be planned with as it is written, one line each. */
    public List<String> problems() {
        return assembled.problems().stream().map(problem -> file + ": " + ReferenceProblems.line(problem)).toList();
    }

    /** Writes the plan sheet, as PDF or SVG by the ending of the file's name, with what the order hangs on where that is known. */
    public void export(Path output, PaperFormat paper, Optional<OrderReasons> reasons) {
        SheetContent content = SheetContents.of(open, assembled, plan, paper, LocalDate.now());
        Document sheet = PlanSheet.of(reasons.map(content::with).orElse(content), OffsetDateTime.now());
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            if (output.getFileName().toString().endsWith(".svg")) {
                new SvgWriter().write(sheet.pages().get(0), bytes);
            } else if (output.getFileName().toString().endsWith(".pdf")) {
                new PdfWriter().write(sheet, bytes);
            } else {
                throw new CommandLineException("no format is known for " + output + "; known are .pdf, .svg");
            }
            Files.createDirectories(output.toAbsolutePath().getParent());
            AtomicFiles.write(output, bytes.toByteArray());
        } catch (IOException e) {
            throw new CommandLineException(output + " cannot be written: " + e.getMessage());
        }
    }
}
