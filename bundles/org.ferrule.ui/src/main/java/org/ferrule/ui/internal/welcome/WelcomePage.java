/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.welcome;

import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.forms.events.IHyperlinkListener;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Hyperlink;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.eclipse.ui.part.EditorPart;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.ui.help.HelpPages;
import org.ferrule.ui.internal.project.ProjectOpening;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.Icons;
import org.ferrule.ui.look.ThemeChange;

/** Says what the program is and what it is not, and opens the demo. */
public class WelcomePage extends EditorPart {

    /** The id of the page. */
    public static final String ID = "org.ferrule.ui.welcome";

    private static final int TEXT_WIDTH = 560;

    private FormToolkit toolkit;
    private Button demo;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        toolkit = new FormToolkit(parent.getDisplay());
        ScrolledForm form = toolkit.createScrolledForm(parent);
        Composite body = form.getBody();
        GridLayoutFactory.fillDefaults().margins(40, 32).spacing(0, 10).applyTo(body);
        title(body);
        paragraph(body, "Ferrule tells which device passes through which: a balloon through a guide catheter, a"
                + " microcatheter over a wire, a burr through an extension. It keeps the figures as the makers print"
                + " them, with their sources, and answers with a verdict, a clearance and the reasons.");
        buttons(body);
        links(body);
        caution(body);
    }

    private void title(Composite body) {
        Composite row = toolkit.createComposite(body);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 0).applyTo(row);
        toolkit.createLabel(row, "").setImage(Icons.TUBE.image());
        Label title = toolkit.createLabel(row, "Welcome to Ferrule");
        title.setFont(JFaceResources.getHeaderFont());
    }

    private void buttons(Composite body) {
        Composite row = toolkit.createComposite(body);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(10, 0).extendedMargins(0, 0, 10, 10).applyTo(row);
        demo = button(row, "Open the demo", Icons.DEMO, () -> new ProjectOpening(getSite().getPage()).demo());
        demo.setFont(JFaceResources.getBannerFont());
        button(row, "New project...", Icons.PROJECT, () -> NewWizards.open(getSite(), NewWizards.NEW_PROJECT));
        button(row, "Open folder...", Icons.PROJECT, this::openFolder);
    }

    private Button button(Composite row, String text, Icons icon, Runnable action) {
        Button button = toolkit.createButton(row, text, SWT.PUSH);
        button.setImage(icon.image());
        GridDataFactory.fillDefaults().hint(SWT.DEFAULT, 40).minSize(140, 40).applyTo(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    private void openFolder() {
        String folder = new DirectoryDialog(getSite().getShell()).open();
        if (folder != null) {
            new ProjectOpening(getSite().getPage()).folder(IPath.fromOSString(folder));
        }
    }

    private void links(Composite body) {
        heading(body, "Where to go from here");
        link(body, "What Ferrule does, in two minutes", "org.ferrule.ui/help/overview.html");
        link(body, "How dimensions are typed", "org.ferrule.ui/help/dimensions.html");
        link(body, "What the verdicts mean", "org.ferrule.ui/help/verdicts.html");
    }

    private void link(Composite body, String text, String page) {
        Hyperlink link = toolkit.createHyperlink(body, text, SWT.NONE);
        ThemeChange.text(link, Colours::link);
        link.addHyperlinkListener(IHyperlinkListener.linkActivatedAdapter(event -> openHelp(page)));
    }

    private void openHelp(String page) {
        try {
            HelpPages.open(getSite().getPage(), page);
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW | StatusManager.LOG);
        }
    }

    private void caution(Composite body) {
        heading(body, "Caution");
        paragraph(body, "A planning aid, not a medical device. The instructions for use of each device decide, and the"
                + " physician who uses it. A device that fits on paper may not pass: coatings, bends and wear count."
                + " Check each figure against its source before you rely on it.");
        paragraph(body, "Makers, devices and figures of the demo are invented.");
    }

    private void heading(Composite body, String text) {
        Label label = toolkit.createLabel(body, text);
        label.setFont(JFaceResources.getBannerFont());
        GridDataFactory.swtDefaults().indent(0, 14).applyTo(label);
    }

    private void paragraph(Composite body, String text) {
        Label label = toolkit.createLabel(body, text, SWT.WRAP);
        GridDataFactory.swtDefaults().hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
    }

    @Override
    public void setFocus() {
        demo.setFocus();
    }

    @Override
    public void dispose() {
        if (toolkit != null) {
            toolkit.dispose();
        }
        super.dispose();
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // there is nothing to save
    }

    @Override
    public void doSaveAs() {
        // there is nothing to save
    }
}
