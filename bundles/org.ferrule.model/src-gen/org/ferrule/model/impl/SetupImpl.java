/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;
import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.Advised;
import org.ferrule.model.Costed;
import org.ferrule.model.ModelPackage;
import org.ferrule.model.Placement;
import org.ferrule.model.Published;
import org.ferrule.model.Setup;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Setup</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getMinutes <em>Minutes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getContrastMl <em>Contrast Ml</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getDoseMgy <em>Dose Mgy</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getMoney <em>Money</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getChanges <em>Changes</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getCautions <em>Cautions</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getOffLabel <em>Off Label</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getStop <em>Stop</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getPublished <em>Published</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#getLeaves <em>Leaves</em>}</li>
 *   <li>{@link org.ferrule.model.impl.SetupImpl#isExchangesWire <em>Exchanges Wire</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SetupImpl extends MoveImpl implements Setup
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
	 * The cached value of the '{@link #getChanges() <em>Changes</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getChanges()
	 * @generated
	 * @ordered
	 */
	protected EList<String> changes;

	/**
	 * The cached value of the '{@link #getCautions() <em>Cautions</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCautions()
	 * @generated
	 * @ordered
	 */
	protected EList<String> cautions;

	/**
	 * The default value of the '{@link #getOffLabel() <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffLabel()
	 * @generated
	 * @ordered
	 */
	protected static final String OFF_LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOffLabel() <em>Off Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOffLabel()
	 * @generated
	 * @ordered
	 */
	protected String offLabel = OFF_LABEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected static final String STOP_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getStop() <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStop()
	 * @generated
	 * @ordered
	 */
	protected String stop = STOP_EDEFAULT;

	/**
	 * The cached value of the '{@link #getPublished() <em>Published</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPublished()
	 * @generated
	 * @ordered
	 */
	protected EList<Published> published;

	/**
	 * The cached value of the '{@link #getLeaves() <em>Leaves</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeaves()
	 * @generated
	 * @ordered
	 */
	protected EList<Placement> leaves;

	/**
	 * The default value of the '{@link #isExchangesWire() <em>Exchanges Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isExchangesWire()
	 * @generated
	 * @ordered
	 */
	protected static final boolean EXCHANGES_WIRE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isExchangesWire() <em>Exchanges Wire</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isExchangesWire()
	 * @generated
	 * @ordered
	 */
	protected boolean exchangesWire = EXCHANGES_WIRE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SetupImpl()
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
		return ModelPackage.Literals.SETUP;
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__MINUTES, oldMinutes, minutes));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__CONTRAST_ML, oldContrastMl, contrastMl));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__DOSE_MGY, oldDoseMgy, doseMgy));
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
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__MONEY, oldMoney, money));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getChanges()
	{
		if (changes == null)
		{
			changes = new EDataTypeEList<String>(String.class, this, ModelPackage.SETUP__CHANGES);
		}
		return changes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<String> getCautions()
	{
		if (cautions == null)
		{
			cautions = new EDataTypeEList<String>(String.class, this, ModelPackage.SETUP__CAUTIONS);
		}
		return cautions;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getOffLabel()
	{
		return offLabel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOffLabel(String newOffLabel)
	{
		String oldOffLabel = offLabel;
		offLabel = newOffLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__OFF_LABEL, oldOffLabel, offLabel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getStop()
	{
		return stop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStop(String newStop)
	{
		String oldStop = stop;
		stop = newStop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__STOP, oldStop, stop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Published> getPublished()
	{
		if (published == null)
		{
			published = new EObjectContainmentEList<Published>(Published.class, this, ModelPackage.SETUP__PUBLISHED);
		}
		return published;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Placement> getLeaves()
	{
		if (leaves == null)
		{
			leaves = new EObjectContainmentEList<Placement>(Placement.class, this, ModelPackage.SETUP__LEAVES);
		}
		return leaves;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isExchangesWire()
	{
		return exchangesWire;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExchangesWire(boolean newExchangesWire)
	{
		boolean oldExchangesWire = exchangesWire;
		exchangesWire = newExchangesWire;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.SETUP__EXCHANGES_WIRE, oldExchangesWire, exchangesWire));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.SETUP__PUBLISHED:
				return ((InternalEList<?>)getPublished()).basicRemove(otherEnd, msgs);
			case ModelPackage.SETUP__LEAVES:
				return ((InternalEList<?>)getLeaves()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
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
			case ModelPackage.SETUP__MINUTES:
				return getMinutes();
			case ModelPackage.SETUP__CONTRAST_ML:
				return getContrastMl();
			case ModelPackage.SETUP__DOSE_MGY:
				return getDoseMgy();
			case ModelPackage.SETUP__MONEY:
				return getMoney();
			case ModelPackage.SETUP__CHANGES:
				return getChanges();
			case ModelPackage.SETUP__CAUTIONS:
				return getCautions();
			case ModelPackage.SETUP__OFF_LABEL:
				return getOffLabel();
			case ModelPackage.SETUP__STOP:
				return getStop();
			case ModelPackage.SETUP__PUBLISHED:
				return getPublished();
			case ModelPackage.SETUP__LEAVES:
				return getLeaves();
			case ModelPackage.SETUP__EXCHANGES_WIRE:
				return isExchangesWire();
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
			case ModelPackage.SETUP__MINUTES:
				setMinutes((BigDecimal)newValue);
				return;
			case ModelPackage.SETUP__CONTRAST_ML:
				setContrastMl((BigDecimal)newValue);
				return;
			case ModelPackage.SETUP__DOSE_MGY:
				setDoseMgy((BigDecimal)newValue);
				return;
			case ModelPackage.SETUP__MONEY:
				setMoney((BigDecimal)newValue);
				return;
			case ModelPackage.SETUP__CHANGES:
				getChanges().clear();
				getChanges().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.SETUP__CAUTIONS:
				getCautions().clear();
				getCautions().addAll((Collection<? extends String>)newValue);
				return;
			case ModelPackage.SETUP__OFF_LABEL:
				setOffLabel((String)newValue);
				return;
			case ModelPackage.SETUP__STOP:
				setStop((String)newValue);
				return;
			case ModelPackage.SETUP__PUBLISHED:
				getPublished().clear();
				getPublished().addAll((Collection<? extends Published>)newValue);
				return;
			case ModelPackage.SETUP__LEAVES:
				getLeaves().clear();
				getLeaves().addAll((Collection<? extends Placement>)newValue);
				return;
			case ModelPackage.SETUP__EXCHANGES_WIRE:
				setExchangesWire((Boolean)newValue);
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
			case ModelPackage.SETUP__MINUTES:
				setMinutes(MINUTES_EDEFAULT);
				return;
			case ModelPackage.SETUP__CONTRAST_ML:
				setContrastMl(CONTRAST_ML_EDEFAULT);
				return;
			case ModelPackage.SETUP__DOSE_MGY:
				setDoseMgy(DOSE_MGY_EDEFAULT);
				return;
			case ModelPackage.SETUP__MONEY:
				setMoney(MONEY_EDEFAULT);
				return;
			case ModelPackage.SETUP__CHANGES:
				getChanges().clear();
				return;
			case ModelPackage.SETUP__CAUTIONS:
				getCautions().clear();
				return;
			case ModelPackage.SETUP__OFF_LABEL:
				setOffLabel(OFF_LABEL_EDEFAULT);
				return;
			case ModelPackage.SETUP__STOP:
				setStop(STOP_EDEFAULT);
				return;
			case ModelPackage.SETUP__PUBLISHED:
				getPublished().clear();
				return;
			case ModelPackage.SETUP__LEAVES:
				getLeaves().clear();
				return;
			case ModelPackage.SETUP__EXCHANGES_WIRE:
				setExchangesWire(EXCHANGES_WIRE_EDEFAULT);
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
			case ModelPackage.SETUP__MINUTES:
				return MINUTES_EDEFAULT == null ? minutes != null : !MINUTES_EDEFAULT.equals(minutes);
			case ModelPackage.SETUP__CONTRAST_ML:
				return CONTRAST_ML_EDEFAULT == null ? contrastMl != null : !CONTRAST_ML_EDEFAULT.equals(contrastMl);
			case ModelPackage.SETUP__DOSE_MGY:
				return DOSE_MGY_EDEFAULT == null ? doseMgy != null : !DOSE_MGY_EDEFAULT.equals(doseMgy);
			case ModelPackage.SETUP__MONEY:
				return MONEY_EDEFAULT == null ? money != null : !MONEY_EDEFAULT.equals(money);
			case ModelPackage.SETUP__CHANGES:
				return changes != null && !changes.isEmpty();
			case ModelPackage.SETUP__CAUTIONS:
				return cautions != null && !cautions.isEmpty();
			case ModelPackage.SETUP__OFF_LABEL:
				return OFF_LABEL_EDEFAULT == null ? offLabel != null : !OFF_LABEL_EDEFAULT.equals(offLabel);
			case ModelPackage.SETUP__STOP:
				return STOP_EDEFAULT == null ? stop != null : !STOP_EDEFAULT.equals(stop);
			case ModelPackage.SETUP__PUBLISHED:
				return published != null && !published.isEmpty();
			case ModelPackage.SETUP__LEAVES:
				return leaves != null && !leaves.isEmpty();
			case ModelPackage.SETUP__EXCHANGES_WIRE:
				return exchangesWire != EXCHANGES_WIRE_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass)
	{
		if (baseClass == Costed.class)
		{
			switch (derivedFeatureID)
			{
				case ModelPackage.SETUP__MINUTES: return ModelPackage.COSTED__MINUTES;
				case ModelPackage.SETUP__CONTRAST_ML: return ModelPackage.COSTED__CONTRAST_ML;
				case ModelPackage.SETUP__DOSE_MGY: return ModelPackage.COSTED__DOSE_MGY;
				case ModelPackage.SETUP__MONEY: return ModelPackage.COSTED__MONEY;
				default: return -1;
			}
		}
		if (baseClass == Advised.class)
		{
			switch (derivedFeatureID)
			{
				case ModelPackage.SETUP__CHANGES: return ModelPackage.ADVISED__CHANGES;
				case ModelPackage.SETUP__CAUTIONS: return ModelPackage.ADVISED__CAUTIONS;
				case ModelPackage.SETUP__OFF_LABEL: return ModelPackage.ADVISED__OFF_LABEL;
				case ModelPackage.SETUP__STOP: return ModelPackage.ADVISED__STOP;
				case ModelPackage.SETUP__PUBLISHED: return ModelPackage.ADVISED__PUBLISHED;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass)
	{
		if (baseClass == Costed.class)
		{
			switch (baseFeatureID)
			{
				case ModelPackage.COSTED__MINUTES: return ModelPackage.SETUP__MINUTES;
				case ModelPackage.COSTED__CONTRAST_ML: return ModelPackage.SETUP__CONTRAST_ML;
				case ModelPackage.COSTED__DOSE_MGY: return ModelPackage.SETUP__DOSE_MGY;
				case ModelPackage.COSTED__MONEY: return ModelPackage.SETUP__MONEY;
				default: return -1;
			}
		}
		if (baseClass == Advised.class)
		{
			switch (baseFeatureID)
			{
				case ModelPackage.ADVISED__CHANGES: return ModelPackage.SETUP__CHANGES;
				case ModelPackage.ADVISED__CAUTIONS: return ModelPackage.SETUP__CAUTIONS;
				case ModelPackage.ADVISED__OFF_LABEL: return ModelPackage.SETUP__OFF_LABEL;
				case ModelPackage.ADVISED__STOP: return ModelPackage.SETUP__STOP;
				case ModelPackage.ADVISED__PUBLISHED: return ModelPackage.SETUP__PUBLISHED;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
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
		result.append(", changes: ");
		result.append(changes);
		result.append(", cautions: ");
		result.append(cautions);
		result.append(", offLabel: ");
		result.append(offLabel);
		result.append(", stop: ");
		result.append(stop);
		result.append(", exchangesWire: ");
		result.append(exchangesWire);
		result.append(')');
		return result.toString();
	}

} //SetupImpl
