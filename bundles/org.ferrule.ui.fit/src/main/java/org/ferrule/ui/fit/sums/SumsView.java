/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.sums;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.ferrule.calc.Calculator;
import org.ferrule.calc.catalogue.Calculators;
import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.input.Arguments;
import org.ferrule.calc.result.CalculationText;
import org.ferrule.ui.Services;
import org.ferrule.ui.fit.clip.TextCopy;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.preferences.UnitPreferences;

/** The calculators: one is chosen, filled in, and answers while one types. */
public final class SumsView extends ViewPart {

    private static final String CHOSEN = "calculator";
    private static final int[] WEIGHTS = { 24, 30, 46 };

    private final List<Calculator> calculators = new Calculators().all();
    private final Map<String, Map<String, List<String>>> texts = new HashMap<>();
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private final Runnable unitFollower = this::unitsChanged;
    private String restored = "";
    private Table list;
    private ScrolledComposite scroller;
    private SumForm form;
    private SumAnswer answer;
    private LatestWork work;
    private Action copy;
    private Optional<Sum> shown = Optional.empty();

    @Override
    public void init(IViewSite site, IMemento memento) throws PartInitException {
        super.init(site, memento);
        restored = Optional.ofNullable(memento).map(m -> m.getString(CHOSEN)).orElse("");
    }

    @Override
    public void saveState(IMemento memento) {
        memento.putString(CHOSEN, form.calculator().name());
    }

    @Override
    public void createPartControl(Composite parent) {
        GridLayoutFactory.fillDefaults().applyTo(parent);
        SashForm parts = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(parts);
        list = new Table(parts, SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        calculators.forEach(calculator -> new TableItem(list, SWT.NONE).setText(calculator.title()));
        list.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choose(list.getSelectionIndex())));
        scroller = new ScrolledComposite(parts, SWT.V_SCROLL);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.addListener(SWT.Resize, event -> fit());
        answer = new SumAnswer(parts);
        parts.setWeights(WEIGHTS);
        work = new LatestWork(list, "Calculate");
        addCopying();
        units.addListener(unitFollower);
        int first = calculators.stream().map(Calculator::name).toList().indexOf(restored);
        list.select(Math.max(0, first));
        choose(Math.max(0, first));
    }

    private void addCopying() {
        copy = new Action("Copy") {
            @Override
            public void run() {
                shown.ifPresent(SumsView.this::copy);
            }
        };
        copy.setToolTipText("Put what was given and its answer into the clipboard, as text");
        getViewSite().getActionBars().getToolBarManager().add(copy);
    }

    private void copy(Sum sum) {
        String words = sum.calculator().title() + "\n" + sum.given() + "\n"
                + String.join("\n", CalculationText.write(sum.answer().orElseThrow())) + "\n";
        TextCopy.put(list, words);
    }

    /** What was filled in is kept while another calculator is looked at. */
    private void choose(int index) {
        if (form != null) {
            texts.put(form.calculator().name(), form.texts());
            form.control().dispose();
        }
        Calculator chosen = calculators.get(index);
        form = new SumForm(scroller, chosen, texts.getOrDefault(chosen.name(), Map.of()), this::calculate);
        scroller.setContent(form.control());
        calculate();
    }

    private void fit() {
        if (form != null) {
            form.control().layout(true, true);
            scroller.setMinHeight(form.control().computeSize(scroller.getClientArea().width, SWT.DEFAULT).y);
        }
    }

    private void calculate() {
        Optional<Arguments> arguments = form.read();
        if (arguments.isPresent()) {
            Calculator calculator = form.calculator();
            work.start(() -> Sum.of(calculator, arguments.get()), this::show);
        } else {
            work.forget();
            show(Optional.empty());
            List<String> missing = form.missing();
            answer.clear(missing.isEmpty() ? "Put right what is marked."
                    : "Still to be filled in: " + String.join(", ", missing));
        }
        fit();
    }

    private void show(Sum sum) {
        show(sum.answer().map(given -> sum));
        Optional<ArgumentException> problem = sum.problem().filter(form::show);
        if (problem.isPresent()) {
            answer.clear("Put right what is marked.");
        } else if (sum.answer().isPresent()) {
            answer.show(sum);
        } else {
            answer.clear(sum.problem().orElseThrow().getMessage());
        }
        fit();
    }

    private void show(Optional<Sum> sum) {
        shown = sum;
        copy.setEnabled(sum.isPresent());
    }

    private void unitsChanged() {
        list.getDisplay().asyncExec(() -> {
            if (!list.isDisposed()) {
                shown.ifPresent(answer::show);
            }
        });
    }

    /** Returns where the answer is shown. */
    public SumAnswer answer() {
        return answer;
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }

    @Override
    public void dispose() {
        units.removeListener(unitFollower);
        super.dispose();
    }
}
