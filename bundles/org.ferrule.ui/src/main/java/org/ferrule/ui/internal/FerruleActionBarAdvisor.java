/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import org.eclipse.jface.action.GroupMarker;
import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.ContributionItemFactory;
import org.eclipse.ui.actions.ActionFactory.IWorkbenchAction;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;

/** The menus and the tool bar, with the groups that other bundles add to. */
class FerruleActionBarAdvisor extends ActionBarAdvisor {

    private IWorkbenchWindow window;

    FerruleActionBarAdvisor(IActionBarConfigurer configurer) {
        super(configurer);
    }

    @Override
    protected void makeActions(IWorkbenchWindow window) {
        this.window = window;
    }

    @Override
    protected void fillMenuBar(IMenuManager menuBar) {
        menuBar.add(fileMenu());
        menuBar.add(editMenu());
        menuBar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        menuBar.add(windowMenu());
        menuBar.add(helpMenu());
    }

    @Override
    protected void fillCoolBar(ICoolBarManager coolBar) {
        ToolBarManager file = new ToolBarManager();
        file.add(action(ActionFactory.SAVE));
        coolBar.add(file);
        coolBar.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
    }

    private IMenuManager fileMenu() {
        MenuManager file = new MenuManager("&File", IWorkbenchActionConstants.M_FILE);
        MenuManager create = new MenuManager("&New", "new");
        create.add(ContributionItemFactory.NEW_WIZARD_SHORTLIST.create(window));
        file.add(create);
        file.add(new GroupMarker(IWorkbenchActionConstants.NEW_EXT));
        addAll(file, ActionFactory.CLOSE, ActionFactory.CLOSE_ALL);
        file.add(new Separator());
        addAll(file, ActionFactory.SAVE, ActionFactory.SAVE_AS, ActionFactory.SAVE_ALL, ActionFactory.REVERT);
        file.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        addAll(file, ActionFactory.RENAME, ActionFactory.REFRESH, ActionFactory.EXPORT);
        file.add(new Separator());
        addAll(file, ActionFactory.PROPERTIES);
        file.add(recentFiles());
        file.add(new Separator());
        addAll(file, ActionFactory.QUIT);
        return file;
    }

    private IMenuManager recentFiles() {
        MenuManager recent = new MenuManager("Recen&t Files", "recent");
        recent.add(ContributionItemFactory.REOPEN_EDITORS.create(window));
        return recent;
    }

    /** The platform's text editor puts its own items at these groups and fails without them. */
    private IMenuManager editMenu() {
        MenuManager edit = new MenuManager("&Edit", IWorkbenchActionConstants.M_EDIT);
        edit.add(new GroupMarker(IWorkbenchActionConstants.EDIT_START));
        addAll(edit, ActionFactory.UNDO, ActionFactory.REDO);
        edit.add(new GroupMarker(IWorkbenchActionConstants.UNDO_EXT));
        edit.add(new Separator());
        addAll(edit, ActionFactory.CUT, ActionFactory.COPY, ActionFactory.PASTE);
        edit.add(new GroupMarker(IWorkbenchActionConstants.CUT_EXT));
        edit.add(new Separator());
        addAll(edit, ActionFactory.DELETE, ActionFactory.SELECT_ALL, ActionFactory.FIND);
        edit.add(new GroupMarker(IWorkbenchActionConstants.FIND_EXT));
        edit.add(new GroupMarker(IWorkbenchActionConstants.ADD_EXT));
        edit.add(new GroupMarker(IWorkbenchActionConstants.EDIT_END));
        edit.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        return edit;
    }

    private IMenuManager windowMenu() {
        MenuManager menu = new MenuManager("&Window", IWorkbenchActionConstants.M_WINDOW);
        MenuManager views = new MenuManager("Show &View", "showView");
        views.add(ContributionItemFactory.VIEWS_SHORTLIST.create(window));
        menu.add(views);
        addAll(menu, ActionFactory.OPEN_NEW_WINDOW);
        addAll(menu, ActionFactory.RESET_PERSPECTIVE);
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        addAll(menu, ActionFactory.PREFERENCES);
        return menu;
    }

    private IMenuManager helpMenu() {
        MenuManager help = new MenuManager("&Help", IWorkbenchActionConstants.M_HELP);
        help.add(new GroupMarker(IWorkbenchActionConstants.MB_ADDITIONS));
        addAll(help, ActionFactory.ABOUT);
        return help;
    }

    private void addAll(MenuManager menu, ActionFactory... factories) {
        for (ActionFactory factory : factories) {
            menu.add(action(factory));
        }
    }

    private IWorkbenchAction action(ActionFactory factory) {
        IWorkbenchAction known = (IWorkbenchAction) getAction(factory.getId());
        if (known != null) {
            return known;
        }
        IWorkbenchAction made = factory.create(window);
        register(made);
        return made;
    }
}
