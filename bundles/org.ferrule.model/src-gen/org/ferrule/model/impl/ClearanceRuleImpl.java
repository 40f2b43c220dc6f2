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

import org.ferrule.model.ClearanceRule;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.ModelPackage;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Clearance Rule</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.ClearanceRuleImpl#getOuter <em>Outer</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClearanceRuleImpl#getInner <em>Inner</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ClearanceRuleImpl#getRequired <em>Required</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ClearanceRuleImpl extends SourcedImpl implements ClearanceRule
{
	/**
	 * The cached value of the '{@link #getOuter() <em>Outer</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOuter()
	 * @generated
	 * @ordered
	 */
	protected EList<DeviceKind> outer;

	/**
	 * The cached value of the '{@link #getInner() <em>Inner</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInner()
	 * @generated
	 * @ordered
	 */
	protected EList<DeviceKind> inner;

	/**
	 * The default value of the '{@link #getRequired() <em>Required</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRequired()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension REQUIRED_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRequired() <em>Required</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRequired()
	 * @generated
	 * @ordered
	 */
	protected Dimension required = REQUIRED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ClearanceRuleImpl()
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
		return ModelPackage.Literals.CLEARANCE_RULE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeviceKind> getOuter()
	{
		if (outer == null)
		{
			outer = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.CLEARANCE_RULE__OUTER);
		}
		return outer;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeviceKind> getInner()
	{
		if (inner == null)
		{
			inner = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.CLEARANCE_RULE__INNER);
		}
		return inner;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getRequired()
	{
		return required;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRequired(Dimension newRequired)
	{
		Dimension oldRequired = required;
		required = newRequired;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.CLEARANCE_RULE__REQUIRED, oldRequired, required));
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
			case ModelPackage.CLEARANCE_RULE__OUTER:
				return getOuter();
			case ModelPackage.CLEARANCE_RULE__INNER:
				return getInner();
			case ModelPackage.CLEARANCE_RULE__REQUIRED:
				return getRequired();
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
			case ModelPackage.CLEARANCE_RULE__OUTER:
				getOuter().clear();
				getOuter().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.CLEARANCE_RULE__INNER:
				getInner().clear();
				getInner().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.CLEARANCE_RULE__REQUIRED:
				setRequired((Dimension)newValue);
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
			case ModelPackage.CLEARANCE_RULE__OUTER:
				getOuter().clear();
				return;
			case ModelPackage.CLEARANCE_RULE__INNER:
				getInner().clear();
				return;
			case ModelPackage.CLEARANCE_RULE__REQUIRED:
				setRequired(REQUIRED_EDEFAULT);
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
			case ModelPackage.CLEARANCE_RULE__OUTER:
				return outer != null && !outer.isEmpty();
			case ModelPackage.CLEARANCE_RULE__INNER:
				return inner != null && !inner.isEmpty();
			case ModelPackage.CLEARANCE_RULE__REQUIRED:
				return REQUIRED_EDEFAULT == null ? required != null : !REQUIRED_EDEFAULT.equals(required);
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
		result.append(" (outer: ");
		result.append(outer);
		result.append(", inner: ");
		result.append(inner);
		result.append(", required: ");
		result.append(required);
		result.append(')');
		return result.toString();
	}

} //ClearanceRuleImpl
