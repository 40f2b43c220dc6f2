/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.escalation.closing.CloseCase;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.live.PlanListener;
import org.ferrule.ui.escalation.log.AttemptStrip;

/** The plan of a case: the wire check and the budgets above, the ladder, and below it what was done of it. */
public final class LadderPage extends DocumentPage implements PlanListener {

    /** Id of the page. */
    public static final String ID = "ladder";

    private static final int LEAST_HEIGHT = 70;

    private final LivePlan live;
    private LadderHead head;
    private LadderCanvas ladder;
    private AttemptStrip strip;
    private String wanted = "";

    /** Creates the page. */
    public LadderPage(DocumentEditor editor, LivePlan live) {
        super(editor, ID, "Ladder");
        this.live = live;
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 4).spacing(0, 6).applyTo(body);
        head = new LadderHead(body, form.getToolkit(), live, () -> ladder.resized());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head.control());
        ladder = new LadderCanvas(body);
        GridDataFactory.fillDefaults().grab(true, true).hint(LEAST_HEIGHT, LEAST_HEIGHT).applyTo(ladder.control());
        strip = new AttemptStrip(body, form.getToolkit(), live, ladder.canvas(),
                () -> new CloseCase(live, getSite().getPage()).ask(getSite().getShell()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(strip.control());
        new StepMenu(ladder, live.session().file());
        ladder.onSelect(number -> head.show(live, ladder.selected()));
        live.addListener(this);
        body.addDisposeListener(event -> live.removeListener(this));
        planChanged();
    }

    @Override
    public void planChanged() {
        if (ladder.canvas().isDisposed()) {
            return;
        }
        if (live.stale()) {
            ladder.await();
        } else {
            live.shown().ifPresent(ladder::show);
            if (!wanted.isEmpty()) {
                select(wanted);
            }
        }
        strip.show(live.shown(), live.stale());
        head.show(live, ladder.selected());
    }

    @Override
    public void orderExplained() {
        live.shown().ifPresent(ladder::show);
    }

    /** Returns the ladder. */
    public LadderCanvas ladder() {
        return ladder;
    }

    /** Returns where attempts are logged. */
    public AttemptStrip strip() {
        return strip;
    }

    /** Returns what is shown of the budgets, in words. */
    public String budgets() {
        return head.budgets();
    }

    /** Shows the step of a move, at once or with the next plan; nothing when it is not in the plan. */
    public void select(String move) {
        Optional<Rung> found = live.shown().flatMap(
                planned -> planned.plan().rungs().stream().filter(r -> r.move().id().equals(move)).findFirst());
        found.ifPresent(rung -> ladder.select(rung.number()));
        // the ladder may still show an earlier plan, or none
        boolean later = found.isPresent() && !ladder.selected().equals(found);
        wanted = live.stale() || later ? move : "";
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return false;
    }

    @Override
    public void setFocus() {
        ladder.canvas().setFocus();
    }
}
