/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.edit.section.ObjectColumn;
import org.ferrule.ui.edit.section.ObjectsBlock;
import org.ferrule.ui.edit.section.PageColumns;
import org.ferrule.ui.edit.section.PartSection;
import org.ferrule.ui.edit.section.TextListBlock;
import org.ferrule.ui.fit.chart.FitChartEditor;
import org.ferrule.ui.fit.proposal.LibraryDevices;
import org.ferrule.ui.fit.proposal.ReferencePickers;

/** The page on which it is set up what a chart asks. */
public final class SetUpPage extends DocumentPage {

    /** Id of the page. */
    public static final String ID = "setup";

    private static final int SEGMENT_COLUMN = 110;

    private final List<PartSection> sections = new ArrayList<>();
    private final LibraryDevices devices;
    private ReferencePickers pickers;
    private IManagedForm managed;

    /** Creates the page. */
    public SetUpPage(FitChartEditor editor) {
        super(editor, ID, "Set-up");
        devices = editor.devices();
    }

    @Override
    protected void fill(IManagedForm form) {
        managed = form;
        pickers = new ReferencePickers(devices, session().file(), getSite().getShell());
        PageColumns columns = new PageColumns(form);
        Composite left = columns.add();
        Composite right = columns.add();
        addChart(left);
        addAxis(left, "Rows: outer devices", Literals.FIT_CHART__OUTER);
        addAxis(left, "Columns: inner devices", Literals.FIT_CHART__INNER);
        addDocuments(left);
        addConditions(right);
        addWay(right);
        addPaper(left);
        sections.forEach(PartSection::refresh);
    }

    private PartSection section(Composite column, String title, EReference part, Consumer<FieldForm> fields) {
        PartSection section = new PartSection(session(), managed, column, title, part, fields);
        sections.add(section);
        return section;
    }

    private void addList(PartSection section, String label, EAttribute feature,
            UnaryOperator<List<String>> adding) {
        section.add(new TextListBlock(session(), managed.getToolkit(), section.client(), label, feature, adding));
    }

    private void addDevices(PartSection section, String label, EAttribute feature) {
        section.add(new TextListBlock(session(), managed.getToolkit(), section.client(), label, feature,
                there -> pickers.devices(there, device -> true, true), devices::referenceAndName));
    }

    private void addChart(Composite column) {
        section(column, "Chart", null, form -> {
            form.text(Literals.DOCUMENT__TITLE);
            form.text(Literals.FIT_CHART__AUDIENCE);
            form.text(Literals.FIT_CHART__AUTHOR);
            form.text(Literals.DOCUMENT__REVISION);
            form.text(Literals.DOCUMENT__DATE).explained("Year-month-day, such as 2026-03-09");
        });
    }

    private void addDocuments(Composite column) {
        PartSection section = section(column, "Libraries and rules", null,
                form -> form.text(Literals.FIT_CHART__RULES).explained("Path of the rule set, relative to the chart"));
        section.addPicking("Choose rule set...", Literals.FIT_CHART__RULES,
                () -> pickers.documents(DocumentKind.RULES, List.of(), false));
        addList(section, "Libraries", Literals.FIT_CHART__LIBRARIES,
                there -> pickers.documents(DocumentKind.DEVICES, there, true));
    }

    private void addAxis(Composite column, String title, EReference axis) {
        PartSection section = section(column, title, axis, form -> {
            form.choices(Literals.AXIS__KINDS);
            form.choice(Literals.AXIS__GROUP_BY);
            form.choice(Literals.AXIS__SORT_BY);
        });
        addDevices(section, "Only these devices", Literals.AXIS__DEVICES);
        addDevices(section, "Hidden", Literals.AXIS__HIDDEN);
    }

    private void addConditions(Composite column) {
        sections.add(ConditionSection.create(session(), managed, column, devices, pickers));
    }

    private void addWay(Composite column) {
        section(column, "Lesion", Literals.FIT_CHART__LESION, form -> {
            form.text(Literals.LESION__NAME);
            form.dimension(Literals.LESION__AT);
            form.dimension(Literals.LESION__LENGTH);
            form.dimension(Literals.LESION__DIAMETER);
            form.dimension(Literals.LESION__REFERENCE);
        });
        PartSection path = section(column, "Way to the lesion", Literals.FIT_CHART__PATH,
                form -> form.text(Literals.VESSEL_PATH__NAME));
        path.add(new ObjectsBlock(session(), managed, path.client(), "", Literals.VESSEL_PATH__SEGMENTS,
                List.of(new ObjectColumn("Segment", Literals.VESSEL_SEGMENT__NAME, SEGMENT_COLUMN),
                        new ObjectColumn("Length", Literals.VESSEL_SEGMENT__LENGTH, SEGMENT_COLUMN),
                        new ObjectColumn("Diameter", Literals.VESSEL_SEGMENT__DIAMETER, SEGMENT_COLUMN)),
                SetUpPage::addSegment));
    }

    private static void addSegment(FieldForm form) {
        form.text(Literals.VESSEL_SEGMENT__NAME);
        form.dimension(Literals.VESSEL_SEGMENT__LENGTH);
        form.dimension(Literals.VESSEL_SEGMENT__DIAMETER);
        form.dimension(Literals.VESSEL_SEGMENT__BEND_RADIUS);
        form.text(Literals.VESSEL_SEGMENT__BEND_ANGLE_DEGREES);
    }

    private void addPaper(Composite column) {
        section(column, "Paper", Literals.FIT_CHART__PAPER, form -> {
            form.choice(Literals.PAPER__SIZE);
            form.choice(Literals.PAPER__ORIENTATION);
            form.choice(Literals.PAPER__PRIMARY_UNIT);
            form.choice(Literals.PAPER__SHOW_NUMBERS);
        });
        PartSection notes = section(column, "Footnotes", null, form -> {
        });
        addList(notes, "", Literals.FIT_CHART__FOOTNOTES, there -> pickers.line("Footnote"));
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        sections.forEach(PartSection::refresh);
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return sections.stream().anyMatch(section -> section.reveal(object, feature));
    }
}
