/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.StatedFact;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stated Fact</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.StatedFactImpl#getFact <em>Fact</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StatedFactImpl#isHolds <em>Holds</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StatedFactImpl extends ElementImpl implements StatedFact
{
	/**
	 * The default value of the '{@link #getFact() <em>Fact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFact()
	 * @generated
	 * @ordered
	 */
	protected static final String FACT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFact() <em>Fact</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFact()
	 * @generated
	 * @ordered
	 */
	protected String fact = FACT_EDEFAULT;

	/**
	 * The default value of the '{@link #isHolds() <em>Holds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isHolds()
	 * @generated
	 * @ordered
	 */
	protected static final boolean HOLDS_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isHolds() <em>Holds</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isHolds()
	 * @generated
	 * @ordered
	 */
	protected boolean holds = HOLDS_EDEFAULT;

	/**
	 * This is true if the Holds attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean holdsESet;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StatedFactImpl()
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
		return ModelPackage.Literals.STATED_FACT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFact()
	{
		return fact;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFact(String newFact)
	{
		String oldFact = fact;
		fact = newFact;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STATED_FACT__FACT, oldFact, fact));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isHolds()
	{
		return holds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHolds(boolean newHolds)
	{
		boolean oldHolds = holds;
		holds = newHolds;
		boolean oldHoldsESet = holdsESet;
		holdsESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STATED_FACT__HOLDS, oldHolds, holds, !oldHoldsESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetHolds()
	{
		boolean oldHolds = holds;
		boolean oldHoldsESet = holdsESet;
		holds = HOLDS_EDEFAULT;
		holdsESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.STATED_FACT__HOLDS, oldHolds, HOLDS_EDEFAULT, oldHoldsESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetHolds()
	{
		return holdsESet;
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
			case ModelPackage.STATED_FACT__FACT:
				return getFact();
			case ModelPackage.STATED_FACT__HOLDS:
				return isHolds();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.STATED_FACT__FACT:
				setFact((String)newValue);
				return;
			case ModelPackage.STATED_FACT__HOLDS:
				setHolds((Boolean)newValue);
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
			case ModelPackage.STATED_FACT__FACT:
				setFact(FACT_EDEFAULT);
				return;
			case ModelPackage.STATED_FACT__HOLDS:
				unsetHolds();
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
			case ModelPackage.STATED_FACT__FACT:
				return FACT_EDEFAULT == null ? fact != null : !FACT_EDEFAULT.equals(fact);
			case ModelPackage.STATED_FACT__HOLDS:
				return isSetHolds();
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
		result.append(" (fact: ");
		result.append(fact);
		result.append(", holds: ");
		if (holdsESet) result.append(holds); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //StatedFactImpl
