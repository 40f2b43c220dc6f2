/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.live;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.swt.widgets.Display;
import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.engine.limits.CaseLimits;
import org.ferrule.engine.plan.AssembledCase;
import org.ferrule.engine.plan.CaseAssembler;
import org.ferrule.engine.plan.OpenCase;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.fit.rules.RuleSetException;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.RuleSet;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.plansheet.why.OrderReasons;
import org.ferrule.plansheet.words.PlanWords;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.document.SessionListener;
import org.ferrule.ui.fit.answer.ShownUnits;

/**
 * A plan that follows its case: every edit of the case, or of a document that it refers to, leads to another one.
 * Documents are read on the display's thread, planning happens in a job on immutable copies, several edits in a row are
 * planned once, and until the new plan is there the last good one is shown as stale. To be used on the display's thread.
 */
public final class LivePlan implements AutoCloseable {

    private final List<PlanListener> listeners = new CopyOnWriteArrayList<>();
    private final DocumentRecords records = Services.get(DocumentRecords.class);
    private final Consumer<IFile> diskFollower = file -> onDisplay(() -> fileChanged(file));
    private final SessionListener follower = new Follower();
    private final CaseAssembler assembler = new CaseAssembler(Extensions.ofPlatform().checks());
    private final Display display = Display.getCurrent();
    private final DocumentSession session;
    private final CaseDocuments documents;
    private final Planning planning;
    private final Reasoning reasoning;
    private List<String> problems = List.of();
    private PlannedCase shown;
    private OpenCase open;
    private boolean stale;
    private boolean due;
    private boolean closed;

    /** Begins to follow the case of a session. */
    public LivePlan(DocumentSession session) {
        this.session = session;
        this.documents = new CaseDocuments(session.file(), this::changed);
        this.planning = new Planning(this::onDisplay, this::planned, this::failed);
        this.reasoning = new Reasoning(this::onDisplay);
        records.addListener(diskFollower);
        session.addListener(follower);
        plan();
    }

    /** Returns the case; nothing when its file is broken. */
    public Optional<CaseDocument> file() {
        return session.document().filter(CaseDocument.class::isInstance).map(CaseDocument.class::cast);
    }

    /** Returns the documents that the case refers to. */
    public CaseDocuments documents() {
        return documents;
    }

    /** Returns the session of the case. */
    public DocumentSession session() {
        return session;
    }

    /** Returns the last good plan. */
    public Optional<PlannedCase> shown() {
        return Optional.ofNullable(shown);
    }

    /** Tells whether what is shown was planned before the last edit. */
    public boolean stale() {
        return stale;
    }

    /** Returns, in sentences, what keeps the case from being planned, or a part of it from counting. */
    public List<String> problems() {
        return problems;
    }

    /** Adds a listener. */
    public void addListener(PlanListener listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(PlanListener listener) {
        listeners.remove(listener);
    }

    private void fire() {
        listeners.forEach(PlanListener::planChanged);
    }

    private void onDisplay(Runnable work) {
        if (!display.isDisposed()) {
            display.asyncExec(() -> {
                if (!closed) {
                    work.run();
                }
            });
        }
    }

    private void changed(DocumentChange change) {
        plan();
    }

    private void fileChanged(IFile changed) {
        if (file().filter(file -> documents.cameOrWent(file, changed)).isPresent()) {
            plan();
        }
    }

    /** Plans soon, once for all that changes until then. */
    private void plan() {
        planning.outdate();
        reasoning.cancel();
        stale = true;
        fire();
        if (!due) {
            due = true;
            onDisplay(this::assemble);
        }
    }

    private void assemble() {
        due = false;
        List<String> found = new ArrayList<>();
        Optional<AssembledCase> assembled = file().flatMap(file -> assembled(file, found));
        if (assembled.isEmpty()) {
            failed(found);
            return;
        }
        assembled.get().problems().forEach(problem -> found.add(problem.message()));
        problems = List.copyOf(found);
        planning.start(assembled.get());
    }

    private Optional<AssembledCase> assembled(CaseDocument file, List<String> found) {
        Optional<TechniqueLibrary> techniques = documents.techniques(file);
        Optional<RuleSet> rules = documents.rules(file);
        Optional<ShelfDocument> shelf = documents.shelf(file);
        if (techniques.isEmpty()) {
            found.add(missing("techniques", file.getTechniques()));
        }
        if (rules.isEmpty()) {
            found.add(missing("rule set", file.getRules()));
        }
        if (shelf.isEmpty()) {
            found.add(missing("shelf", file.getShelf()));
        }
        if (techniques.isEmpty() || rules.isEmpty()) {
            return Optional.empty();
        }
        try {
            open = new OpenCase(file, documents.libraries(file, found), rules.get(), techniques.get(), shelf);
            return Optional.of(assembler.assemble(file, Catalogue.of(open.libraries()),
                    RuleTranslator.translate(rules.get()), techniques.get(), shelf, LocalDate.now()));
        } catch (RuleSetException e) {
            found.add(e.getMessage());
            return Optional.empty();
        }
    }

    private static String missing(String what, String path) {
        return path == null ? "The case names no " + what + "." : "The " + what + " \"" + path + "\" cannot be opened.";
    }

    private void planned(AssembledCase assembled, Plan plan) {
        String currency = file().flatMap(documents::shelf).map(ShelfDocument::getCurrency).orElse("");
        shown = new PlannedCase(open, assembled, plan, PlanWords.english(assembled.ladder(), assembled.instruments(),
                assembled.stock().shelf(), ShownUnits.first(), currency), CaseLimits.of(open.file(), plan),
                CaseLimits.brief(open.file(), plan), Optional.empty());
        stale = false;
        fire();
        // without a proof each figure would take a whole search, many times
        if (plan.order().isExact()) {
            reasoning.start(plan, this::reasoned);
        }
    }

    private void reasoned(Plan plan, OrderReasons reasons) {
        if (shown != null && shown.plan() == plan) {
            shown = shown.with(reasons);
            if (!stale) {
                listeners.forEach(PlanListener::orderExplained);
            }
        }
    }

    private void failed(List<String> found) {
        problems = List.copyOf(found);
        fire();
    }

    @Override
    public void close() {
        closed = true;
        planning.cancel();
        reasoning.cancel();
        records.removeListener(diskFollower);
        session.removeListener(follower);
        documents.close();
    }

    private final class Follower implements SessionListener {

        @Override
        public void documentChanged(DocumentChange change) {
            changed(change);
        }
    }
}
