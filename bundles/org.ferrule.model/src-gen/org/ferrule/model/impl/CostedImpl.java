/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.Costed;
import org.ferrule.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Costed</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.CostedImpl#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CostedImpl#getContrastMl <em>Contrast Ml</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CostedImpl#getDoseMgy <em>Dose Mgy</em>}</li>
 *   <li>{@link org.ferrule.model.impl.CostedImpl#getMoney <em>Money</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class CostedImpl extends ElementImpl implements Costed
{
	/**
	 * The default value of the '{@link #getMinutes() <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinutes()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal MINUTES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMinutes() <em>Minutes</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMinutes()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal minutes = MINUTES_EDEFAULT;

	/**
	 * The default value of the '{@link #getContrastMl() <em>Contrast Ml</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContrastMl()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal CONTRAST_ML_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getContrastMl() <em>Contrast Ml</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getContrastMl()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal contrastMl = CONTRAST_ML_EDEFAULT;

	/**
	 * The default value of the '{@link #getDoseMgy() <em>Dose Mgy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDoseMgy()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal DOSE_MGY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDoseMgy() <em>Dose Mgy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDoseMgy()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal doseMgy = DOSE_MGY_EDEFAULT;

	/**
	 * The default value of the '{@link #getMoney() <em>Money</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoney()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal MONEY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMoney() <em>Money</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMoney()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal money = MONEY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CostedImpl()
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
		return ModelPackage.Literals.COSTED;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getMinutes()
	{
		return minutes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinutes(BigDecimal newMinutes)
	{
		BigDecimal oldMinutes = minutes;
		minutes = newMinutes;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.COSTED__MINUTES, oldMinutes, minutes));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getContrastMl()
	{
		return contrastMl;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContrastMl(BigDecimal newContrastMl)
	{
		BigDecimal oldContrastMl = contrastMl;
		contrastMl = newContrastMl;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.COSTED__CONTRAST_ML, oldContrastMl, contrastMl));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getDoseMgy()
	{
		return doseMgy;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDoseMgy(BigDecimal newDoseMgy)
	{
		BigDecimal oldDoseMgy = doseMgy;
		doseMgy = newDoseMgy;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.COSTED__DOSE_MGY, oldDoseMgy, doseMgy));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getMoney()
	{
		return money;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMoney(BigDecimal newMoney)
	{
		BigDecimal oldMoney = money;
		money = newMoney;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.COSTED__MONEY, oldMoney, money));
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
			case ModelPackage.COSTED__MINUTES:
				return getMinutes();
			case ModelPackage.COSTED__CONTRAST_ML:
				return getContrastMl();
			case ModelPackage.COSTED__DOSE_MGY:
				return getDoseMgy();
			case ModelPackage.COSTED__MONEY:
				return getMoney();
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
			case ModelPackage.COSTED__MINUTES:
				setMinutes((BigDecimal)newValue);
				return;
			case ModelPackage.COSTED__CONTRAST_ML:
				setContrastMl((BigDecimal)newValue);
				return;
			case ModelPackage.COSTED__DOSE_MGY:
				setDoseMgy((BigDecimal)newValue);
				return;
			case ModelPackage.COSTED__MONEY:
				setMoney((BigDecimal)newValue);
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
			case ModelPackage.COSTED__MINUTES:
				setMinutes(MINUTES_EDEFAULT);
				return;
			case ModelPackage.COSTED__CONTRAST_ML:
				setContrastMl(CONTRAST_ML_EDEFAULT);
				return;
			case ModelPackage.COSTED__DOSE_MGY:
				setDoseMgy(DOSE_MGY_EDEFAULT);
				return;
			case ModelPackage.COSTED__MONEY:
				setMoney(MONEY_EDEFAULT);
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
			case ModelPackage.COSTED__MINUTES:
				return MINUTES_EDEFAULT == null ? minutes != null : !MINUTES_EDEFAULT.equals(minutes);
			case ModelPackage.COSTED__CONTRAST_ML:
				return CONTRAST_ML_EDEFAULT == null ? contrastMl != null : !CONTRAST_ML_EDEFAULT.equals(contrastMl);
			case ModelPackage.COSTED__DOSE_MGY:
				return DOSE_MGY_EDEFAULT == null ? doseMgy != null : !DOSE_MGY_EDEFAULT.equals(doseMgy);
			case ModelPackage.COSTED__MONEY:
				return MONEY_EDEFAULT == null ? money != null : !MONEY_EDEFAULT.equals(money);
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
		result.append(" (minutes: ");
		result.append(minutes);
		result.append(", contrastMl: ");
		result.append(contrastMl);
		result.append(", doseMgy: ");
		result.append(doseMgy);
		result.append(", money: ");
		result.append(money);
		result.append(')');
		return result.toString();
	}

} //CostedImpl
