/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.ferrule.model.DeviceKind;
import org.ferrule.model.FigureClass;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Span;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Span</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.SpanImpl#getFigure <em>Figure</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SpanImpl#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SpanImpl#getBelow <em>Below</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SpanImpl#getAbove <em>Above</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SpanImpl#isRunsLow <em>Runs Low</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SpanImpl extends SourcedImpl implements Span
{
	/**
	 * The default value of the '{@link #getFigure() <em>Figure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFigure()
	 * @generated
	 * @ordered
	 */
	protected static final FigureClass FIGURE_EDEFAULT = FigureClass.INNER_DIAMETER;

	/**
	 * The cached value of the '{@link #getFigure() <em>Figure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFigure()
	 * @generated
	 * @ordered
	 */
	protected FigureClass figure = FIGURE_EDEFAULT;

	/**
	 * This is true if the Figure attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean figureESet;

	/**
	 * The cached value of the '{@link #getKinds() <em>Kinds</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKinds()
	 * @generated
	 * @ordered
	 */
	protected EList<DeviceKind> kinds;

	/**
	 * The default value of the '{@link #getBelow() <em>Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBelow()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension BELOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBelow() <em>Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBelow()
	 * @generated
	 * @ordered
	 */
	protected Dimension below = BELOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getAbove() <em>Above</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAbove()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension ABOVE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAbove() <em>Above</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAbove()
	 * @generated
	 * @ordered
	 */
	protected Dimension above = ABOVE_EDEFAULT;

	/**
	 * The default value of the '{@link #isRunsLow() <em>Runs Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRunsLow()
	 * @generated
	 * @ordered
	 */
	protected static final boolean RUNS_LOW_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isRunsLow() <em>Runs Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isRunsLow()
	 * @generated
	 * @ordered
	 */
	protected boolean runsLow = RUNS_LOW_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SpanImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.SPAN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FigureClass getFigure()
	{
		return figure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFigure(FigureClass newFigure)
	{
		FigureClass oldFigure = figure;
		figure = newFigure == null ? FIGURE_EDEFAULT : newFigure;
		boolean oldFigureESet = figureESet;
		figureESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPAN__FIGURE, oldFigure, figure, !oldFigureESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetFigure()
	{
		FigureClass oldFigure = figure;
		boolean oldFigureESet = figureESet;
		figure = FIGURE_EDEFAULT;
		figureESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.SPAN__FIGURE, oldFigure, FIGURE_EDEFAULT, oldFigureESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetFigure()
	{
		return figureESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeviceKind> getKinds()
	{
		if (kinds == null)
		{
			kinds = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.SPAN__KINDS);
		}
		return kinds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getBelow()
	{
		return below;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBelow(Dimension newBelow)
	{
		Dimension oldBelow = below;
		below = newBelow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPAN__BELOW, oldBelow, below));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getAbove()
	{
		return above;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAbove(Dimension newAbove)
	{
		Dimension oldAbove = above;
		above = newAbove;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPAN__ABOVE, oldAbove, above));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isRunsLow()
	{
		return runsLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRunsLow(boolean newRunsLow)
	{
		boolean oldRunsLow = runsLow;
		runsLow = newRunsLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SPAN__RUNS_LOW, oldRunsLow, runsLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.SPAN__FIGURE:
				return getFigure();
			case ModelPackage.SPAN__KINDS:
				return getKinds();
			case ModelPackage.SPAN__BELOW:
				return getBelow();
			case ModelPackage.SPAN__ABOVE:
				return getAbove();
			case ModelPackage.SPAN__RUNS_LOW:
				return isRunsLow();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.SPAN__FIGURE:
				setFigure((FigureClass)newValue);
				return;
			case ModelPackage.SPAN__KINDS:
				getKinds().clear();
				getKinds().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.SPAN__BELOW:
				setBelow((Dimension)newValue);
				return;
			case ModelPackage.SPAN__ABOVE:
				setAbove((Dimension)newValue);
				return;
			case ModelPackage.SPAN__RUNS_LOW:
				setRunsLow((Boolean)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.SPAN__FIGURE:
				unsetFigure();
				return;
			case ModelPackage.SPAN__KINDS:
				getKinds().clear();
				return;
			case ModelPackage.SPAN__BELOW:
				setBelow(BELOW_EDEFAULT);
				return;
			case ModelPackage.SPAN__ABOVE:
				setAbove(ABOVE_EDEFAULT);
				return;
			case ModelPackage.SPAN__RUNS_LOW:
				setRunsLow(RUNS_LOW_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.SPAN__FIGURE:
				return isSetFigure();
			case ModelPackage.SPAN__KINDS:
				return kinds != null && !kinds.isEmpty();
			case ModelPackage.SPAN__BELOW:
				return BELOW_EDEFAULT == null ? below != null : !BELOW_EDEFAULT.equals(below);
			case ModelPackage.SPAN__ABOVE:
				return ABOVE_EDEFAULT == null ? above != null : !ABOVE_EDEFAULT.equals(above);
			case ModelPackage.SPAN__RUNS_LOW:
				return runsLow != RUNS_LOW_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (figure: ");
		if (figureESet) result.append(figure); else result.append("<unset>");
		result.append(", kinds: ");
		result.append(kinds);
		result.append(", below: ");
		result.append(below);
		result.append(", above: ");
		result.append(above);
		result.append(", runsLow: ");
		result.append(runsLow);
		result.append(')');
		return result.toString();
	}

} //SpanImpl
