/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.required;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.ui.IMemento;
import org.ferrule.engine.extension.Extensions;
import org.ferrule.fit.check.FitCheck;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.picture.Caption;
import org.ferrule.profile.required.RequiredLanes;
import org.ferrule.profile.required.RequiredPlot;
import org.ferrule.profile.required.RequiredWords;
import org.ferrule.profile.required.SensitivityPlot;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.follow.FollowingView;
import org.ferrule.ui.fit.later.LatestWork;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;

/** A diameter that is slid along, the verdicts of all partners along it, and the figures that decide. */
public final class RequiredView extends FollowingView {

    private static final int MOST_BARS = 20;

    private RequiredRequest request = RequiredRequest.EMPTY;
    private RequiredAnswer answer = RequiredAnswer.problem(RequiredAnswer.FIRST);
    private Optional<Length> chosen = Optional.empty();
    private RequiredForm form;
    private PictureCanvas plot;
    private PictureCanvas bars;
    private DiameterSlider slider;
    private LatestWork work;

    @Override
    protected void restore(IMemento memento) {
        request = RequiredRequest.restore(memento);
    }

    @Override
    protected void save(IMemento memento) {
        request.save(memento);
    }

    @Override
    protected void createForm(Composite parent) {
        form = new RequiredForm(parent, this::ask);
    }

    @Override
    protected void createBody(Composite parent) {
        parent.setLayout(new FillLayout());
        CTabFolder folder = new CTabFolder(parent, SWT.BOTTOM | SWT.FLAT);
        Composite flips = new Composite(folder, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(flips);
        plot = new PictureCanvas(flips);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(plot);
        plot.ownedBy(this::owner);
        slider = new DiameterSlider(flips, this::slide);
        tab(folder, "Verdicts along the diameter", flips);
        bars = new PictureCanvas(folder);
        bars.ownedBy(this::owner);
        tab(folder, "What decides", bars);
        folder.setSelection(0);
        work = new LatestWork(folder, "Required diameters");
        redraw();
    }

    private static void tab(CTabFolder folder, String title, Composite content) {
        CTabItem item = new CTabItem(folder, SWT.NONE);
        item.setText(title);
        item.setControl(content);
    }

    private void ask() {
        boolean otherPlace = !request.devices().equals(form.request().devices())
                || request.section() != form.request().section();
        chosen = otherPlace ? Optional.empty() : chosen;
        request = form.request();
        devicesChanged();
    }

    @Override
    protected void devicesChanged() {
        form.show(devices(), request);
        ProjectDevices now = devices();
        RequiredRequest asked = request;
        List<FitCheck> checks = Extensions.ofPlatform().checks();
        work.start(() -> RequiredAnswer.of(now, asked, checks), this::show);
    }

    private void show(RequiredAnswer next) {
        answer = next;
        redraw();
    }

    @Override
    protected void redraw() {
        Optional<RequiredLanes> lanes = lanes();
        slider.show(lanes.orElse(null), lanes.map(this::diameter).orElse(Length.ZERO));
        if (lanes.isEmpty()) {
            plot.clear(answer.problem());
            bars.clear(answer.problem());
            slider.say("");
            return;
        }
        plot.draw((width, height) -> RequiredPlot.picture(lanes.get(), Optional.of(diameter(lanes.get())), words(),
                width, height));
        bars.draw((width, height) -> SensitivityPlot
                .picture(answer.influences().stream().limit(MOST_BARS).toList(), words(), width));
        say(lanes.get());
    }

    private Optional<RequiredLanes> lanes() {
        return answer.required().map(required -> new RequiredLanes(required, request.phase()));
    }

    private Length diameter(RequiredLanes lanes) {
        return chosen.orElse(lanes.printed());
    }

    private void slide(Length diameter) {
        chosen = Optional.of(diameter);
        plot.refresh();
        lanes().ifPresent(this::say);
    }

    private void say(RequiredLanes lanes) {
        slider.say(new RequiredWords(lanes, words()).chosen(diameter(lanes)));
    }

    static ProfileWords words() {
        return ProfileWords.english(ShownUnits.first());
    }

    private PictureOwner owner() {
        PictureOwner owner = answer.rules().map(rules -> PictureOwner.of(caption(rules)))
                .orElse(PictureOwner.UNKNOWN);
        return project().map(owner::in).orElse(owner);
    }

    private static Caption caption(RuleSet rules) {
        String edition = rules.revision().isEmpty() ? rules.title()
                : words().phrases().fill("page.edition", rules.title(), rules.revision());
        return Caption.of("", words().phrases().fill("page.rules", edition), words().phrases().get("page.caution"));
    }

    /** Returns where verdicts are shown along the diameter. */
    public PictureCanvas canvas() {
        return plot;
    }

    /** Returns where the figures that decide are shown. */
    public PictureCanvas bars() {
        return bars;
    }

    /** Returns the slider. */
    public Scale slider() {
        return slider.control();
    }

    /** Returns what is said of the diameter. */
    public String said() {
        return slider.said();
    }

    @Override
    public void setFocus() {
        plot.setFocus();
    }
}
