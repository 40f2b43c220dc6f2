/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.ferrule.model.AfterUseRule;
import org.ferrule.model.DeviceKind;
import org.ferrule.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>After Use Rule</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.AfterUseRuleImpl#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AfterUseRuleImpl#getGrowthLow <em>Growth Low</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AfterUseRuleImpl#getGrowthCentre <em>Growth Centre</em>}</li>
 *   <li>{@link org.ferrule.model.impl.AfterUseRuleImpl#getGrowthHigh <em>Growth High</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AfterUseRuleImpl extends SourcedImpl implements AfterUseRule
{
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
	 * The default value of the '{@link #getGrowthLow() <em>Growth Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrowthLow()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal GROWTH_LOW_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGrowthLow() <em>Growth Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrowthLow()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal growthLow = GROWTH_LOW_EDEFAULT;

	/**
	 * The default value of the '{@link #getGrowthCentre() <em>Growth Centre</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrowthCentre()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal GROWTH_CENTRE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGrowthCentre() <em>Growth Centre</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrowthCentre()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal growthCentre = GROWTH_CENTRE_EDEFAULT;

	/**
	 * The default value of the '{@link #getGrowthHigh() <em>Growth High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrowthHigh()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal GROWTH_HIGH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGrowthHigh() <em>Growth High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGrowthHigh()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal growthHigh = GROWTH_HIGH_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AfterUseRuleImpl()
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
		return ModelPackage.Literals.AFTER_USE_RULE;
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
			kinds = new EDataTypeEList<DeviceKind>(DeviceKind.class, this, ModelPackage.AFTER_USE_RULE__KINDS);
		}
		return kinds;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getGrowthLow()
	{
		return growthLow;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrowthLow(BigDecimal newGrowthLow)
	{
		BigDecimal oldGrowthLow = growthLow;
		growthLow = newGrowthLow;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AFTER_USE_RULE__GROWTH_LOW, oldGrowthLow, growthLow));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getGrowthCentre()
	{
		return growthCentre;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrowthCentre(BigDecimal newGrowthCentre)
	{
		BigDecimal oldGrowthCentre = growthCentre;
		growthCentre = newGrowthCentre;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AFTER_USE_RULE__GROWTH_CENTRE, oldGrowthCentre, growthCentre));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getGrowthHigh()
	{
		return growthHigh;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGrowthHigh(BigDecimal newGrowthHigh)
	{
		BigDecimal oldGrowthHigh = growthHigh;
		growthHigh = newGrowthHigh;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.AFTER_USE_RULE__GROWTH_HIGH, oldGrowthHigh, growthHigh));
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
			case ModelPackage.AFTER_USE_RULE__KINDS:
				return getKinds();
			case ModelPackage.AFTER_USE_RULE__GROWTH_LOW:
				return getGrowthLow();
			case ModelPackage.AFTER_USE_RULE__GROWTH_CENTRE:
				return getGrowthCentre();
			case ModelPackage.AFTER_USE_RULE__GROWTH_HIGH:
				return getGrowthHigh();
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
			case ModelPackage.AFTER_USE_RULE__KINDS:
				getKinds().clear();
				getKinds().addAll((Collection<? extends DeviceKind>)newValue);
				return;
			case ModelPackage.AFTER_USE_RULE__GROWTH_LOW:
				setGrowthLow((BigDecimal)newValue);
				return;
			case ModelPackage.AFTER_USE_RULE__GROWTH_CENTRE:
				setGrowthCentre((BigDecimal)newValue);
				return;
			case ModelPackage.AFTER_USE_RULE__GROWTH_HIGH:
				setGrowthHigh((BigDecimal)newValue);
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
			case ModelPackage.AFTER_USE_RULE__KINDS:
				getKinds().clear();
				return;
			case ModelPackage.AFTER_USE_RULE__GROWTH_LOW:
				setGrowthLow(GROWTH_LOW_EDEFAULT);
				return;
			case ModelPackage.AFTER_USE_RULE__GROWTH_CENTRE:
				setGrowthCentre(GROWTH_CENTRE_EDEFAULT);
				return;
			case ModelPackage.AFTER_USE_RULE__GROWTH_HIGH:
				setGrowthHigh(GROWTH_HIGH_EDEFAULT);
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
			case ModelPackage.AFTER_USE_RULE__KINDS:
				return kinds != null && !kinds.isEmpty();
			case ModelPackage.AFTER_USE_RULE__GROWTH_LOW:
				return GROWTH_LOW_EDEFAULT == null ? growthLow != null : !GROWTH_LOW_EDEFAULT.equals(growthLow);
			case ModelPackage.AFTER_USE_RULE__GROWTH_CENTRE:
				return GROWTH_CENTRE_EDEFAULT == null ? growthCentre != null : !GROWTH_CENTRE_EDEFAULT.equals(growthCentre);
			case ModelPackage.AFTER_USE_RULE__GROWTH_HIGH:
				return GROWTH_HIGH_EDEFAULT == null ? growthHigh != null : !GROWTH_HIGH_EDEFAULT.equals(growthHigh);
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
		result.append(" (kinds: ");
		result.append(kinds);
		result.append(", growthLow: ");
		result.append(growthLow);
		result.append(", growthCentre: ");
		result.append(growthCentre);
		result.append(", growthHigh: ");
		result.append(growthHigh);
		result.append(')');
		return result.toString();
	}

} //AfterUseRuleImpl
