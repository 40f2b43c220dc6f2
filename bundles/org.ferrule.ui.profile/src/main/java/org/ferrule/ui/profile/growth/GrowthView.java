/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.growth;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.resources.IProject;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.ferrule.engine.catalogue.CataloguedDevice;
import org.ferrule.picture.Caption;
import org.ferrule.picture.Picture;
import org.ferrule.profile.growth.GrowthComparison;
import org.ferrule.profile.growth.GrowthPlot;
import org.ferrule.profile.growth.GrowthWords;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Pressure;
import org.ferrule.ui.document.DeviceReference;
import org.ferrule.ui.fit.answer.ShownUnits;
import org.ferrule.ui.fit.clip.CopyTable;
import org.ferrule.ui.fit.follow.DeviceDrop;
import org.ferrule.ui.fit.follow.FollowingView;
import org.ferrule.ui.fit.follow.TurningSash;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.picture.PictureOwner;
import org.ferrule.ui.profile.compare.DeviceChoice;

/** How balloons grow with pressure, by their printed tables, over each other and followed as they are edited. */
public final class GrowthView extends FollowingView {

    private static final String DEVICE = "device";
    private static final int[] WEIGHTS = { 70, 30 };
    private static final double LEAST_HEIGHT_MM = 75;
    private static final String FIRST = "Choose balloons: with Add..., or with Growth Curves in the menu of a device.";

    private List<String> chosen = List.of();
    private DeviceChoice balloons;
    private PictureCanvas plot;
    private CopyTable table;

    @Override
    protected void restore(IMemento memento) {
        chosen = Stream.of(memento.getChildren(DEVICE)).map(IMemento::getID).toList();
    }

    @Override
    protected void save(IMemento memento) {
        chosen.forEach(device -> memento.createChild(DEVICE, device));
    }

    @Override
    protected void createForm(Composite parent) {
        balloons = new DeviceChoice(parent, "Balloons", device -> device.parts().balloon().isPresent(),
                ProfileWords::letter, GrowthComparison.MOST, this::ask);
    }

    @Override
    protected void createBody(Composite parent) {
        parent.setLayout(new FillLayout());
        SashForm parts = TurningSash.in(parent);
        plot = new PictureCanvas(parts);
        plot.ownedBy(this::owner);
        table = new CopyTable(parts);
        parts.setWeights(WEIGHTS);
        plot.clear(FIRST);
        DeviceDrop.onto(parent.getParent(), this::add);
    }

    private void ask() {
        chosen = balloons.references();
        devicesChanged();
    }

    /** Adds devices; those of another project take the place of all. */
    void add(List<DeviceReference> more) {
        if (more.isEmpty()) {
            return;
        }
        IProject project = more.get(0).library().getProject();
        Set<String> all = new LinkedHashSet<>(project().filter(project::equals).isPresent() ? chosen : List.of());
        more.stream().filter(device -> device.library().getProject().equals(project)).map(DeviceReference::text)
                .forEach(all::add);
        chosen = all.stream().limit(GrowthComparison.MOST).toList();
        choose(project);
    }

    @Override
    protected void devicesChanged() {
        balloons.show(devices(), chosen);
        redraw();
    }

    @Override
    protected void redraw() {
        Optional<GrowthComparison> growth = growth();
        growth.ifPresentOrElse(known -> plot.draw((width, height) -> picture(known, width, height)),
                () -> plot.clear(FIRST));
        table.show(growth.map(GrowthView::heads).orElse(List.of()), growth.map(GrowthView::rows).orElse(List.of()));
    }

    /** Where there is too little height for legend and curves, all of it is made smaller. */
    private static Picture picture(GrowthComparison growth, double widthMm, double heightMm) {
        double larger = Math.max(1, LEAST_HEIGHT_MM / heightMm);
        return GrowthPlot.picture(growth, words(), larger * widthMm, larger * heightMm);
    }

    private static List<String> heads(GrowthComparison growth) {
        List<String> heads = new ArrayList<>(List.of(words().phrases().get("growth.table")));
        growth.balloons().forEach(balloon -> heads
                .add(ProfileWords.letter(growth.balloons().indexOf(balloon)) + " " + balloon.name()));
        return heads;
    }

    private static List<List<String>> rows(GrowthComparison growth) {
        GrowthWords sentences = new GrowthWords(growth, words());
        List<List<String>> rows = new ArrayList<>();
        for (Pressure pressure : growth.pressures()) {
            List<String> row = new ArrayList<>(List.of(sentences.pressure(pressure)));
            for (int i = 0; i < growth.balloons().size(); i++) {
                row.add(sentences.at(i, pressure));
            }
            rows.add(row);
        }
        return rows;
    }

    private List<CataloguedDevice> found() {
        return chosen.stream().flatMap(reference -> devices().catalogue().devices().stream()
                .filter(device -> device.isCalled(reference)).limit(1)).toList();
    }

    /** Returns the curves that are shown. */
    public Optional<GrowthComparison> growth() {
        List<CataloguedDevice> found = found();
        return found.isEmpty() ? Optional.empty()
                : Optional.of(GrowthComparison.of(found.stream().map(CataloguedDevice::device).toList()));
    }

    static ProfileWords words() {
        return ProfileWords.english(ShownUnits.first());
    }

    private PictureOwner owner() {
        String libraries = found().stream().map(CataloguedDevice::library).distinct().sorted()
                .collect(Collectors.joining(", "));
        PictureOwner owner = PictureOwner.of(Caption.of("", words().phrases().fill("page.libraries", libraries),
                words().phrases().get("growth.caption")));
        return project().map(owner::in).orElse(owner);
    }

    /** Returns where the curves are shown. */
    public PictureCanvas canvas() {
        return plot;
    }

    /** Returns the texts of the table, row by row. */
    public List<List<String>> texts() {
        return table.texts();
    }

    @Override
    public void setFocus() {
        plot.setFocus();
    }
}
